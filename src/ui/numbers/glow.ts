const glowTime = 700;

/** Elements that wait for the next glow. */
const waiting = new Set<HTMLElement>();
const glows = new WeakMap<HTMLElement, Animation>();

function glow(element: HTMLElement): void {
  const before = glows.get(element);
  if (before === undefined) {
    const frames = [{ backgroundColor: 'var(--glow)' }, { backgroundColor: 'transparent' }];
    glows.set(element, element.animate(frames, { duration: glowTime, easing: 'ease-out' }));
    return;
  }
  before.currentTime = 0;
  before.play();
}

function glowAll(): void {
  if (!matchMedia('(prefers-reduced-motion: reduce)').matches) for (const element of waiting) glow(element);
  waiting.clear();
}

/** Lets what has just changed glow for a moment, from the frame after the one in which the change is drawn. */
export function glowSoon(element: HTMLElement): void {
  if (waiting.size === 0) requestAnimationFrame(() => setTimeout(glowAll));
  waiting.add(element);
}
