import { wording, wordingOf } from '../../language/wording';
import type { Option } from '../text/option';
import type { FigureScope, FigureTally } from './ownFigures';

/** Words of the list that asks of each figure whether it is one's own. */
export const figuresTexts = {
  heading: wording`Taken over: is it yours?`,
  about: wording`Each of these numbers came with the model. Say what you think of it, or put your own in its place: then nobody takes another farm’s number for yours.`,
  scope: wording`Figures`,
  mine: wording`Mine`,
  guess: wording`Still a guess`,
  change: wording`Change`,
  noSource: wording`No source says where it comes from.`,
  none: wording`None is left: every figure here is yours, or a guess of yours.`,
} as const;

export const figureScopeOptions: readonly Option<FigureScope>[] = [
  { value: 'headlines', label: wording`that the headlines rest on` },
  { value: 'all', label: wordingOf('figures')`all` },
];

/** `12 yours, 3 guesses, 41 taken over`. */
export function tallyText({ yours, guesses, takenOver, unsourced }: FigureTally): string {
  const parts = [
    wording`${yours} yours`,
    guesses === 1 ? wording`1 guess` : wording`${guesses} guesses`,
    ...(takenOver > 0 || unsourced === 0 ? [wording`${takenOver} taken over`] : []),
    ...(unsourced > 0 ? [wording`${unsourced} without a source`] : []),
  ];
  return parts.join(', ');
}
