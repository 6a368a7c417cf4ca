import { fontOf, type ChartInk } from '../../../present/picture/ink';
import { hatch } from './hatch';
import { createMeasure } from './measure';

/** The colours of a page in forced-colours mode. */
const forced = {
  text: 'CanvasText',
  quiet: 'CanvasText',
  hair: 'GrayText',
  paper: 'Canvas',
  // Lines in CanvasText over columns in it would not be seen.
  mark: 'GrayText',
  planA: 'LinkText',
  planB: 'CanvasText',
  fault: 'CanvasText',
};

/**
 * Reads the design tokens (CSS custom properties) that apply to an element.
 * @param forPage whether the colours give way to those that a reader forces on the page
 */
export function inkOf(element: Element, forPage = true): ChartInk {
  const style = getComputedStyle(element);
  const type = { family: style.fontFamily, size: parseFloat(style.fontSize) };
  const token = (name: string): string => style.getPropertyValue(`--${name}`).trim();
  const colours =
    forPage && matchMedia('(forced-colors: active)').matches
      ? forced
      : {
          text: token('ink'),
          quiet: token('quiet'),
          hair: token('hair'),
          paper: token('paper'),
          mark: token('mark'),
          planA: token('plan-a'),
          planB: token('plan-b'),
          fault: token('fault'),
        };
  return {
    ...type,
    ...colours,
    measure: createMeasure(fontOf({ ...type, ...colours })),
    hatched: (colour) => hatch(colour, colours.paper),
  };
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
