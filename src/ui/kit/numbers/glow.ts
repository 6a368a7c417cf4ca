/** Milliseconds without a change after which what glows begins to fade, and that fading takes. */
const rest = 250;
const fadeTime = 700;

/** Elements that changed since the last glow, and those that glow; what fades is in neither. */
const waiting = new Set<HTMLElement>();
const lit = new Set<HTMLElement>();
const fades = new WeakMap<HTMLElement, Animation>();
let timer: ReturnType<typeof setTimeout> | undefined;

function light(): void {
  const changed = matchMedia('(prefers-reduced-motion: reduce)').matches ? [] : waiting;
  for (const element of changed) {
    if (lit.has(element)) continue;
    fades.get(element)?.cancel();
    element.classList.add('lit');
    lit.add(element);
  }
  waiting.clear();
  clearTimeout(timer);
  timer = setTimeout(fade, rest);
}

function fade(): void {
  for (const element of lit) {
    element.classList.remove('lit');
    const frames = [{ backgroundColor: 'var(--glow)' }, { backgroundColor: 'transparent' }];
    fades.set(element, element.animate(frames, { duration: fadeTime, easing: 'ease-out' }));
  }
  lit.clear();
}

/**
 * Lets what has just changed glow, from the frame after the one in which the change is drawn. It glows steadily while
 * changes go on and fades when they rest: a fade at each keystroke would have the browser draw all the while.
 */
export function glowSoon(element: HTMLElement): void {
  if (waiting.size === 0) requestAnimationFrame(() => setTimeout(light));
  waiting.add(element);
}
