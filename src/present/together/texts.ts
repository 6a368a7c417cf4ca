import { wording } from '../../language/wording';
import type { Option } from '../text/option';
import type { Noun } from '../text/noun';
import { commonTexts } from '../text/commonTexts';
import { togetherHeading } from './heading';
import type { Direction, Reach } from './choices';

export const entryNoun: Noun = { one: wording`entry`, many: wording`entries` };
export const stepNoun: Noun = { one: wording`step`, many: wording`steps` };

/** What can be chosen around the picture. */
export const pictureChoices = {
  show: wording`Show`,
  shows: [
    { value: 'one', label: wording`around one entry` },
    { value: 'whole', label: wording`the whole model` },
  ] satisfies Option<string>[],
  entry: wording`Entry in the middle`,
  reach: wording`Steps`,
  reaches: [
    { value: '1', label: wording`one` },
    { value: '2', label: wording`two` },
    { value: '3', label: wording`three` },
    { value: 'all', label: wording`all` },
  ] satisfies Option<Reach>[],
  direction: wording`Arrows lead`,
  directions: [
    { value: 'across', label: wording`right` },
    { value: 'down', label: wording`down` },
  ] satisfies Option<Direction>[],
} as const;

/** Fixed texts of the picture of how entries hang together, some of them for screen readers. */
export const togetherTexts = {
  print: wording`Print the picture and the table`,
  heading: togetherHeading,
  /** The box in which the picture scrolls. */
  region: wording`The picture; it scrolls`,
  picture: wording`Entries and the arrows between them`,
  howToRead: wording`An arrow leads from an entry to one that is worked out from it.`,
  howToWalk: wording`Press an entry to put it in the middle. Arrow keys go from entry to entry.`,
  toRow: wording`Go to its row in Numbers`,
  size: wording`Size of the picture`,
  fit: wording`All of it`,
  actual: wording`Readable size`,
  smaller: wording`Smaller`,
  larger: wording`Larger`,
  wide: wording`Use the whole width`,
  narrow: wording`Show the numbers beside it`,
  layingOut: wording`Laying it out …`,
  notLaidOut: (reason: string) => wording`The picture could not be laid out: ${reason}`,
  key: wording`What the marks mean`,
  keyInput: wording`A line under the number marks an input, a heavy frame a headline.`,
  /** @param name of the plan in which alone an arrow holds */
  keyPlan: (name: string) => wording`only in plan ${name}`,
  noGroup: wording`no group`,
  inMiddle: wording`in the middle`,
  // Instead of a value.
  inCircle: wording`in a circle`,
  faulty: wording`faulty formula`,
  noValue: commonTexts.noValue,
  // The table.
  table: wording`The entries as a table`,
  tableRegion: wording`Table of the entries; it scrolls`,
  value: wording`value`,
  uses: wording`uses`,
  usedBy: wording`used by`,
  depth: wording`steps from inputs`,
  /** Where a circle lies in the way. */
  noDepth: wording`circle`,
  more: (count: number) => wording`Show ${count} more`,
} as const;
