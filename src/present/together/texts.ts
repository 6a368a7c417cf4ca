import type { Option } from '../text/option';
import type { Noun } from '../text/noun';
import { commonTexts } from '../text/commonTexts';
import { togetherHeading } from './heading';
import type { Direction, Reach } from './choices';

export const entryNoun: Noun = { one: 'entry', many: 'entries' };
export const stepNoun: Noun = { one: 'step', many: 'steps' };

/** What can be chosen around the picture. */
export const pictureChoices = {
  show: 'Show',
  shows: [
    { value: 'one', label: 'around one entry' },
    { value: 'whole', label: 'the whole model' },
  ] satisfies Option<string>[],
  entry: 'Entry in the middle',
  reach: 'Steps',
  reaches: [
    { value: '1', label: 'one' },
    { value: '2', label: 'two' },
    { value: '3', label: 'three' },
    { value: 'all', label: 'all' },
  ] satisfies Option<Reach>[],
  direction: 'Arrows lead',
  directions: [
    { value: 'across', label: 'right' },
    { value: 'down', label: 'down' },
  ] satisfies Option<Direction>[],
} as const;

/** Fixed texts of the picture of how entries hang together, some of them for screen readers. */
export const togetherTexts = {
  print: 'Print the picture and the table',
  heading: togetherHeading,
  /** The box in which the picture scrolls. */
  region: 'The picture; it scrolls',
  picture: 'Entries and the arrows between them',
  howToRead: 'An arrow leads from an entry to one that is worked out from it.',
  howToWalk: 'Press an entry to put it in the middle. Arrow keys go from entry to entry.',
  toRow: 'Go to its row in Numbers',
  size: 'Size of the picture',
  fit: 'All of it',
  actual: 'Readable size',
  smaller: 'Smaller',
  larger: 'Larger',
  wide: 'Use the whole width',
  narrow: 'Show the numbers beside it',
  layingOut: 'Laying it out …',
  notLaidOut: (reason: string) => `The picture could not be laid out: ${reason}`,
  key: 'What the marks mean',
  keyInput: 'A line under the number marks an input, a heavy frame a headline.',
  /** @param name of the plan in which alone an arrow holds */
  keyPlan: (name: string) => `only in plan ${name}`,
  noGroup: 'no group',
  inMiddle: 'in the middle',
  // Instead of a value.
  inCircle: 'in a circle',
  faulty: 'faulty formula',
  noValue: commonTexts.noValue,
  // The table.
  table: 'The entries as a table',
  tableRegion: 'Table of the entries; it scrolls',
  value: 'value',
  uses: 'uses',
  usedBy: 'used by',
  depth: 'steps from inputs',
  /** Where a circle lies in the way. */
  noDepth: 'circle',
  more: (count: number) => `Show ${count} more`,
} as const;
