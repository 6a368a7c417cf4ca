import type { Option } from '../text/option';
import type { FigureScope, FigureTally } from './ownFigures';

/** Words of the list that asks of each figure whether it is one's own. */
export const figuresTexts = {
  heading: 'Taken over: is it yours?',
  about:
    'Each of these numbers came with the model. Say what you think of it, or put your own in its place: then nobody takes another farm’s number for yours.',
  scope: 'Figures',
  mine: 'Mine',
  guess: 'Still a guess',
  change: 'Change',
  noSource: 'No source says where it comes from.',
  none: 'None is left: every figure here is yours, or a guess of yours.',
} as const;

export const figureScopeOptions: readonly Option<FigureScope>[] = [
  { value: 'headlines', label: 'that the headlines rest on' },
  { value: 'all', label: 'all' },
];

/** `12 yours, 3 guesses, 41 taken over`. */
export function tallyText({ yours, guesses, takenOver, unsourced }: FigureTally): string {
  const parts = [
    `${yours} yours`,
    guesses === 1 ? '1 guess' : `${guesses} guesses`,
    ...(takenOver > 0 || unsourced === 0 ? [`${takenOver} taken over`] : []),
    ...(unsourced > 0 ? [`${unsourced} without a source`] : []),
  ];
  return parts.join(', ');
}
