import { wording, wordingOf } from '../../../language/wording';
import type { Cell } from '../../../model/cell';
import { usesOf } from '../../../model/change/entries';
import type { Model } from '../../../model/model';
import type { Content } from '../../../model/content';
import { listed, plainly, say, sentences, type Phrase } from '../../text/phrase';
import { printedUnit } from '../../text/printedUnit';

/** Words on changing an entry itself. */
export const changeTexts = {
  words: wording`Change its label, unit or note`,
  label: wording`Label`,
  unit: wording`Unit`,
  note: wording`Note`,
  noUnit: wording`none, a plain number`,
  noNote: wordingOf('no note')`none`,
  nameInFormulas: wording`Its name in formulas`,
  everyFormulaFollows: wording`Small letters, digits and _. Every formula that names it follows.`,
  copy: wording`Copy it`,
  up: wording`Move up`,
  down: wording`Move down`,
  remove: wording`Delete it`,
  removeReally: (label: string) => wording`Delete ${label}?`,
  usedNowhere: wording`No other entry uses it.`,
  leaves: wording`It is taken out of the sums that it is a part of:`,
  breaks: wording`These need it and are left with a fault until they are changed:`,
  unties: wording`These no longer move with it:`,
  tells: (texts: number) =>
    texts === 1
      ? wording`One text has a figure made from it, and will show how that is written.`
      : wording`${texts} texts have a figure made from it, and will show how that is written.`,
  removeYes: wording`Yes, delete it`,
  /** Of a number that only the deleted entry uses. */
  onlyHere: (amount: string) => wording`Nothing else uses ${amount}.`,
  removeBoth: (amount: string) => wording`Yes, and ${amount} with it`,
  removeNo: wording`Keep it`,
  commands: (label: string) => wording`What can be done with ${label}`,
} as const;

/** Entries that use one that is to go, by what becomes of them. */
export interface Deletion {
  /** Sums that it is taken out of. */
  readonly leaves: readonly Cell[];
  /** Formulas that need it. */
  readonly breaks: readonly Cell[];
  /** Entries that are said to move with it. */
  readonly unties: readonly Cell[];
  /** How many texts have figures made from it. */
  readonly tells: number;
}

/** What becomes of the entries that use an entry, once it is gone. */
export function deletionOf(model: Model, { name, row }: Pick<Cell, 'name' | 'row'>): Deletion {
  const uses = usesOf(model.sheet, name).filter((use) => use.row !== row);
  const breaking = new Set(uses.filter(({ without }) => without === undefined).map((use) => use.row));
  const cellsOf = (rows: ReadonlySet<number>): Cell[] => model.cells.filter((cell) => rows.has(cell.row));
  const rest = uses.filter((use) => !breaking.has(use.row));
  const [tied, summed] = [true, false].map(
    (isTie) => new Set(rest.filter(({ column }) => (column === 'correlation') === isTie).map((use) => use.row)),
  );
  const told = new Set(model.lines.flatMap((line) => (line.kind === 'text' && breaking.has(line.row) ? line.row : [])));
  return { leaves: cellsOf(summed!), breaks: cellsOf(breaking), unties: cellsOf(tied!), tells: told.size };
}

function ownFault(content: Content | undefined, id: number): boolean {
  return content?.kind === 'void' && content.cause === id;
}

/** Entries that have a fault of their own in the model after a change, and had none before. */
export function newlyFaulty(before: Model, after: Model): Cell[] {
  const wasFaulty = (cell: Cell): boolean => {
    const old = before.cells.find(({ row }) => row === cell.row);
    return old !== undefined && before.plans.some(({ contents }) => ownFault(contents[old.id], old.id));
  };
  return after.cells.filter(
    (cell) => after.plans.some(({ contents }) => ownFault(contents[cell.id], cell.id)) && !wasFaulty(cell),
  );
}

/** `Hands and Costs need another formula now.`; nothing where none does. */
function faultySentence(faulty: readonly Cell[]): Phrase {
  if (faulty.length === 0) return [];
  const names = listed(
    faulty.map(({ label }) => label),
    3,
  );
  return faulty.length === 1 ? say`${names} needs another formula now.` : say`${names} need another formula now.`;
}

/** What follows the new name of an entry that some formulas name. */
function renamedIn(uses: number): Phrase {
  if (uses === 0) return [];
  return plainly(
    uses === 1
      ? wording`So it is in the formula that names it.`
      : wording`So it is in the ${uses} formulas that name it.`,
  );
}

/** `Wage, copy`, with a number behind where there is one already. */
export function copyLabel({ cells }: Pick<Model, 'cells'>, label: string): string {
  const taken = new Set(cells.map((cell) => cell.label));
  for (let count = 1; ; count += 1) {
    const made = count === 1 ? wording`${label}, copy` : wording`${label}, copy ${count}`;
    if (!taken.has(made)) return made;
  }
}

/** What was done, as the line below the numbers says it. */
export const changeSaid = {
  label: (from: string, to: string): Phrase => say`${from} is called ${to} now.`,
  name: (from: string, to: string, uses: number): Phrase =>
    sentences(say`${from} is ${to} in formulas now.`, renamedIn(uses)),
  unit: (label: string, unit: string, faulty: readonly Cell[]): Phrase => {
    const now = unit === '' ? say`${label} is a plain number now.` : say`${label} is in ${printedUnit(unit)} now.`;
    return sentences(now, faultySentence(faulty));
  },
  note: (label: string): Phrase => say`The note of ${label} is changed.`,
  copied: (label: string, copy: string): Phrase => say`${copy} stands below ${label}. Nothing uses it yet.`,
  moved: (label: string, by: -1 | 1): Phrase =>
    by === -1 ? say`${label} stands one place higher.` : say`${label} stands one place lower.`,
  /** @param amount label of the amount that is deleted with it; undefined: none is */
  removed: (label: string, { leaves }: Deletion, faulty: readonly Cell[], amount?: string): Phrase =>
    sentences(
      amount === undefined ? say`${label} is deleted.` : say`${label} is deleted, and with it ${amount}.`,
      leaves.length === 0
        ? []
        : say`It is taken out of ${listed(
            leaves.map((cell) => cell.label),
            3,
          )}.`,
      faultySentence(faulty),
    ),
} as const;
