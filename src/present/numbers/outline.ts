import type { Cell } from '../../model/cell';
import { isInputInAny, type Line, type Model } from '../../model/model';

/** Lines under one heading, in file order. */
export interface OutlineGroup {
  /** Blank for lines before the first heading. */
  readonly name: string;
  readonly lines: readonly Line[];
}

/** The filter of the list. */
export interface Sieve {
  /** Words that an entry's label or name must hold, each somewhere. */
  readonly words: string;
  readonly onlyInputs: boolean;
}

/** The model's lines under their headings; a row without a group stays under the heading before it. */
export function outline(lines: readonly Line[], cells: readonly Cell[]): OutlineGroup[] {
  const groups = new Map<string, Line[]>();
  let heading = '';
  for (const line of withoutTitle(lines)) {
    heading = (line.kind === 'cell' ? cells[line.cell]?.group : line.group) || heading;
    const members = groups.get(heading);
    if (members === undefined) groups.set(heading, [line]);
    else members.push(line);
  }
  return [...groups].map(([name, members]) => ({ name, lines: members }));
}

/** The first text row is the model's title and stands above the numbers. */
function withoutTitle(lines: readonly Line[]): readonly Line[] {
  const title = lines.find((line) => line.kind === 'text');
  return lines.filter((line) => line !== title);
}

function folded(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
}

/** Whether an entry passes the filter. */
function passes(entry: Pick<Cell, 'label' | 'name'>, isInput: boolean, { words, onlyInputs }: Sieve): boolean {
  const { label, name } = entry;
  const text = folded(`${label} ${name} ${name.replaceAll('_', ' ')}`);
  return (
    (!onlyInputs || isInput) &&
    folded(words)
      .split(/\s+/)
      .every((word) => text.includes(word))
  );
}

/** The groups with only the lines that pass a filter; a filter that narrows the list leaves out text rows. */
export function sifted(
  groups: readonly OutlineGroup[],
  { cells, plans }: Model,
  sieve: Sieve,
): readonly OutlineGroup[] {
  if (sieve.words.trim() === '' && !sieve.onlyInputs) return groups;
  const stays = (line: Line): boolean => {
    if (line.kind === 'text') return false;
    if (line.kind === 'refused') return passes(line, !sieve.onlyInputs, sieve);
    const cell = cells[line.cell];
    return cell !== undefined && passes(cell, isInputInAny(plans, line.cell), sieve);
  };
  const narrowed = groups.map(({ name, lines }) => ({ name, lines: lines.filter(stays) }));
  return narrowed.filter(({ lines }) => lines.length > 0);
}

/**
 * Reuses the objects of lines and groups that are the same as before, so that their rows are not made anew on the page.
 */
export function keptLines(groups: readonly OutlineGroup[], before: readonly OutlineGroup[]): readonly OutlineGroup[] {
  const old = new Map(before.flatMap(({ lines }) => lines.map((line) => [textOf(line), line] as const)));
  const oldGroups = new Map(before.map((group) => [group.name, group]));
  const now = groups.map(({ name, lines }) => {
    const same = lines.map((line) => old.get(textOf(line)) ?? line);
    const group = oldGroups.get(name);
    const unmoved = group?.lines.length === same.length && group.lines.every((line, i) => line === same[i]);
    return unmoved ? group : { name, lines: same };
  });
  return now.length === before.length && now.every((group, i) => group === before[i]) ? before : now;
}

function textOf(line: Line): string {
  return JSON.stringify(line);
}
