import { wording } from '../../language/wording';
import { field, planOfColumn, type Sheet, type SheetRow } from '../../model/sheet';
import { namesText } from '../text/namesText';

/** Texts about the versions of a model on the shelf. */
export const versionTexts = {
  heading: wording`Versions`,
  each: (title: string) => wording`Versions of ${title}`,
  about: wording`The last 50 savings: about one a minute of work, and one with each saved file or visit.`,
  opened: wording`As the file was opened`,
  goBack: wording`Go back to this`,
  goBackFrom: (when: string) => wording`Go back to the version of ${when}`,
  withWords: wording`Go back, with its words and batches`,
  withWordsFrom: (when: string) =>
    wording`Go back to the version of ${when}, with the words of its case and its timed batches`,
  onlyThere: wording`It is open in another window: go back to a version there.`,
  wentBack: (when: string) =>
    wording`The model is as it was on ${when}. What it was just before stands among its versions.`,
  wentBackWithWords: (when: string) =>
    wording`The model, the words of its case and its timed batches are as they were on ${when}. What they were just before stands among its versions.`,
} as const;

/** Names told one by one; of more, the number is said. */
const most = 6;

/** What a record is called: an entry by its label or its name in words; a line without either holds text. */
function nameOf(row: SheetRow): string {
  return field(row, 'label') || field(row, 'name').replaceAll('_', ' ');
}

/** What records are called, each once; lines of text are counted. */
function namesOf(rows: readonly SheetRow[]): string[] {
  const names = rows.map(nameOf);
  const lines = names.filter((name) => name === '').length;
  const counted = lines === 0 ? [] : [lines === 1 ? wording`a line of text` : wording`${lines} lines of text`];
  return [...new Set(names.filter((name) => name !== '')), ...counted];
}

/** Texts kept beside a sheet, by the key of their setting. */
type OwnTexts = Readonly<Record<string, string>>;

/** What differs between the texts that two versions keep beside their sheets. */
function wordsChanged(before: OwnTexts, after: OwnTexts): string[] {
  const keys = [...new Set([...Object.keys(before), ...Object.keys(after)])];
  const changed = keys.filter((key) => (before[key] ?? '') !== (after[key] ?? ''));
  const parts = [changed.some((key) => !isTrials(key)) ? wording`the words of the case` : ''];
  return [...parts, changed.some(isTrials) ? wording`the timed batches` : ''].filter(Boolean);
}

function isTrials(key: string): boolean {
  return key.startsWith('setting trials');
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

/**
 * What differs between two states of a model, by the labels of its entries: `Wage, Price; new: Rent`; and then what of
 * the texts beside them does.
 */
export function whatChanged(before: Sheet, after: Sheet, wordsBefore: OwnTexts = {}, words = wordsBefore): string {
  const old = new Map(before.rows.map((row) => [row.row, row]));
  const now = new Set(after.rows.map(({ row }) => row));
  const changed = after.rows.filter((row) => {
    const was = old.get(row.row);
    return was !== undefined && !isSame(was, row);
  });
  const [plansBefore, plansAfter] = [plansOf(before), plansOf(after)];
  const parts: readonly (readonly [tell: (names: string) => string, names: readonly string[]])[] = [
    [(names) => names, namesOf(changed)],
    [(names) => wording`new: ${names}`, namesOf(after.rows.filter(({ row }) => !old.has(row)))],
    [(names) => wording`taken away: ${names}`, namesOf(before.rows.filter(({ row }) => !now.has(row)))],
    [(names) => wording`new plan: ${names}`, plansAfter.filter((plan) => !plansBefore.includes(plan))],
    [(names) => wording`plan taken away: ${names}`, plansBefore.filter((plan) => !plansAfter.includes(plan))],
    [(names) => names, wordsChanged(wordsBefore, words)],
  ];
  const told = parts.filter(([, names]) => names.length > 0).map(([tell, names]) => tell(namesText(names, most)));
  return told.join('; ') || wording`the order of its rows or columns`;
}
