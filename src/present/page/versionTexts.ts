import { field, planOfColumn, type Sheet, type SheetRow } from '../../model/sheet';
import { namesText } from '../text/namesText';

/** Texts about the versions of a model on the shelf. */
export const versionTexts = {
  heading: 'Versions',
  each: (title: string) => `Versions of ${title}`,
  about: 'The last 50 savings: about one a minute of work, and one with each saved file or visit.',
  opened: 'As the file was opened',
  goBack: 'Go back to this',
  goBackFrom: (when: string) => `Go back to the version of ${when}`,
  onlyThere: 'It is open in another window: go back to a version there.',
  wentBack: (when: string) => `The model is as it was on ${when}. What it was just before stands among its versions.`,
} as const;

/** Names told one by one; of more, the number is said. */
const most = 6;

function nameOf(row: SheetRow): string {
  return field(row, 'label') || field(row, 'name') || `row ${row.row}`;
}

function plansOf({ columns }: Sheet): readonly string[] {
  return columns.flatMap((column) => planOfColumn(column) ?? []);
}

function isSame(a: SheetRow, b: SheetRow): boolean {
  if (a === b) return true;
  return [...new Set([...a.fields.keys(), ...b.fields.keys()])].every(
    (column) => field(a, column) === field(b, column),
  );
}

/** What differs between two states of a model, by the labels of its entries: `Wage, Price; new: Rent`. */
export function whatChanged(before: Sheet, after: Sheet): string {
  const old = new Map(before.rows.map((row) => [row.row, row]));
  const now = new Set(after.rows.map(({ row }) => row));
  const changed = after.rows.filter((row) => {
    const was = old.get(row.row);
    return was !== undefined && !isSame(was, row);
  });
  const [plansBefore, plansAfter] = [plansOf(before), plansOf(after)];
  const parts: readonly (readonly [lead: string, names: readonly string[]])[] = [
    ['', changed.map(nameOf)],
    ['new: ', after.rows.filter(({ row }) => !old.has(row)).map(nameOf)],
    ['taken away: ', before.rows.filter(({ row }) => !now.has(row)).map(nameOf)],
    ['new plan: ', plansAfter.filter((plan) => !plansBefore.includes(plan))],
    ['plan taken away: ', plansBefore.filter((plan) => !plansAfter.includes(plan))],
  ];
  const told = parts.filter(([, names]) => names.length > 0).map(([lead, names]) => lead + namesText(names, most));
  return told.join('; ') || 'the order of its rows or columns';
}
