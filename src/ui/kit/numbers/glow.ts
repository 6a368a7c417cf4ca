/** Milliseconds without a change after which a glow begins to fade; `fadeTime` is how long fading takes. */
const rest = 250;
const fadeTime = 700;

/**
 * Elements changed since the last frame of glow (`waiting`) and those that glow (`lit`); fading ones are in neither.
 */
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
 * Makes a changed element glow, from the frame after the one that draws the change. The glow is steady while changes go
 * on and fades when they rest: a fade with each keystroke would keep the browser drawing.
 */
export function glowSoon(element: HTMLElement): void {
  if (waiting.size === 0) requestAnimationFrame(() => setTimeout(light));
  waiting.add(element);
}
