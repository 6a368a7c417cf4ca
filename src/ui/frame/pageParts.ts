import type { PageState } from '../app/pageContext';
import { createInTurn, oneATurn } from '../app/turns/inTurn';

/** The parts of the page in the order in which they come onto it: nothing that stands moves. */
const parts = ['bar', 'title', 'what hides', 'hidden money', 'headlines', 'halves', 'rest'] as const;

/** Says whether a part is on the page. They come in turns, all at once for print and for a jump to an entry. */
export type HasPart = (part: (typeof parts)[number]) => boolean;

/** The parts of a page that begins. */
export function createPageParts({ printing, navigation }: Pick<PageState, 'printing' | 'navigation'>): HasPart {
  const wanted = (): boolean => printing() || navigation.wanted() !== undefined;
  const there = createInTurn(() => parts.length, wanted, oneATurn);
  return (part) => there() > parts.indexOf(part);
}
