import type { Ink } from './plot';

/** The colours and type of a chart, read from the page's own tokens. */
export interface ChartInk extends Ink {
  readonly paper: string;
  readonly mark: string;
  readonly planA: string;
  readonly planB: string;
  readonly fault: string;
}

/** What a page in forced colours draws with. */
const forced = {
  text: 'CanvasText',
  quiet: 'CanvasText',
  hair: 'GrayText',
  paper: 'Canvas',
  mark: 'CanvasText',
  planA: 'LinkText',
  planB: 'CanvasText',
  fault: 'CanvasText',
};

/** Reads the tokens where an element stands. */
export function inkOf(element: Element): ChartInk {
  const style = getComputedStyle(element);
  const type = { family: style.fontFamily, size: parseFloat(style.fontSize) };
  if (matchMedia('(forced-colors: active)').matches) return { ...forced, ...type };
  const token = (name: string): string => style.getPropertyValue(`--${name}`).trim();
  return {
    ...type,
    text: token('ink'),
    quiet: token('quiet'),
    hair: token('hair'),
    paper: token('paper'),
    mark: token('mark'),
    planA: token('plan-a'),
    planB: token('plan-b'),
    fault: token('fault'),
  };
}

/** The font that a chart writes in. */
export function fontOf({ size, family }: Ink): string {
  return `${size}px ${family}`;
}

/** Calls back whenever the colours or the type may have changed; returns how to stop. */
export function watchInk(changed: () => void): () => void {
  const queries = ['print', '(forced-colors: active)', '(prefers-color-scheme: dark)'].map((query) =>
    matchMedia(query),
  );
  for (const query of queries) query.addEventListener('change', changed);
  const root = new MutationObserver(changed);
  root.observe(document.documentElement, { attributeFilter: ['data-scheme'] });
  let open = true;
  void document.fonts.ready.then(() => {
    if (open) changed();
  });
  return () => {
    open = false;
    root.disconnect();
    for (const query of queries) query.removeEventListener('change', changed);
  };
}
