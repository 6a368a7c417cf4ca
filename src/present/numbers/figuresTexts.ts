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
  /** Of a figure that is worked out until somebody gives a number. */
  inPlace: (label: string) => wording`${label}: your number`,
  putIn: wording`Put it in`,
  noNumber: wording`Enter a number.`,
  noSource: wording`No source says where it comes from.`,
  none: wording`None is left: every figure here is yours, or a guess of yours.`,
} as const;

export const figureScopeOptions: readonly Option<FigureScope>[] = [
  { value: 'headlines', label: wording`that the headlines rest on` },
  { value: 'all', label: wordingOf('figures')`all` },
];

function yoursText({ yours, ranges }: FigureTally): string {
  if (ranges === 0) return wording`${yours} yours`;
  return ranges === 1
    ? wording`${yours} yours (1 with a range taken over)`
    : wording`${yours} yours (${ranges} with ranges taken over)`;
}

/** `12 yours (2 with ranges taken over), 3 guesses, 41 taken over`. */
export function tallyText(tally: FigureTally): string {
  const { guesses, takenOver, unsourced } = tally;
  const parts = [
    yoursText(tally),
    guesses === 1 ? wording`1 guess` : wording`${guesses} guesses`,
    ...(takenOver > 0 || unsourced === 0 ? [wording`${takenOver} taken over`] : []),
    ...(unsourced > 0 ? [wording`${unsourced} without a source`] : []),
  ];
  return parts.join(', ');
}
