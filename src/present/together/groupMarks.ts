import type { Model } from '../../model/model';
import { outline } from '../numbers/outline';

/** How a group is marked in the picture: by a pattern and a tint, each from a short list, besides its name. */
export interface GroupMark {
  /** The heading; blank for entries before the first. */
  readonly group: string;
  /** From 0, below `patternCount`. */
  readonly pattern: number;
  /** From 0, below `tintCount`. */
  readonly tint: number;
}

/** Two numbers without a common factor, so that the two together repeat late. */
const patternCount = 8;
const tintCount = 7;

/** By entry, the mark of the heading under which it stands in the list of numbers. */
export function groupMarks({ lines, cells }: Pick<Model, 'lines' | 'cells'>): ReadonlyMap<number, GroupMark> {
  const marks = new Map<number, GroupMark>();
  const groups = outline(lines, cells).filter((group) => group.lines.some(({ kind }) => kind === 'cell'));
  groups.forEach(({ name, lines: members }, i) => {
    const mark = { group: name, pattern: i % patternCount, tint: i % tintCount };
    for (const line of members) if (line.kind === 'cell') marks.set(line.cell, mark);
  });
  return marks;
}
