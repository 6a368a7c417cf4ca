import type { Expression } from '../../formula/expression';
import type { Budget } from '../cell';
import { understand } from '../formulaReader';
import { field, planOfColumn, type Sheet, type SheetRow } from '../sheet';
import { withFields } from './rows';
import { hasName } from './standingName';

type Sign = 1 | -1;
type Side = Exclude<Budget, ''>;

/** Names that stand in a formula as plain terms of a sum, each with its sign. */
function termsOf(expression: Expression): Map<string, Sign> {
  const found = new Map<string, Sign>();
  const waiting: [Expression, Sign][] = [[expression, 1]];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const [part, sign] = next;
    if (part.kind === 'name') found.set(part.name, sign);
    if (part.kind === 'unary' && part.sign === '-') waiting.push([part.of, sign === 1 ? -1 : 1]);
    if (part.kind !== 'binary' || (part.sign !== '+' && part.sign !== '-')) continue;
    waiting.push([part.left, sign], [part.right, part.sign === '+' ? sign : sign === 1 ? -1 : 1]);
  }
  return found;
}

/** A formula that adds up lines of the budget: where it stands, and the sign with which a line of a side enters it. */
interface Total {
  readonly row: number;
  readonly column: string;
  readonly text: string;
  readonly sign: Sign;
  /** Lines of that side that it has already. */
  readonly lines: number;
}

const opposite = (sign: Sign | undefined): Sign | undefined => (sign === undefined ? undefined : sign === 1 ? -1 : 1);

function totalIn(row: SheetRow, column: string, sides: ReadonlyMap<string, Side>, side: Side): Total | undefined {
  const text = field(row, column);
  const understood = understand(text);
  if (text === '' || understood.kind !== 'expression') return undefined;
  const lines = [...termsOf(understood.expression)].filter(([name]) => sides.has(name));
  const own = lines.filter(([name]) => sides.get(name) === side);
  const others = lines.filter(([name]) => sides.get(name) !== side);
  const otherSign = others[0]?.[1];
  // A sum of costs alone is no place for a return.
  const lone = own.length === 0 && otherSign === 1 && side === 'return';
  const sign = own[0]?.[1] ?? (lone ? undefined : opposite(otherSign));
  return sign === undefined ? undefined : { row: row.row, column, text, sign, lines: own.length };
}

/** Sides of the budget by the names of its lines. */
function sidesOf({ rows }: Sheet): ReadonlyMap<string, Side> {
  const lines = rows.map((row) => [field(row, 'name'), field(row, 'budget')] as const);
  return new Map(lines.filter((line): line is readonly [string, Side] => line[1] === 'cost' || line[1] === 'return'));
}

/** The formulas that a new line of a side must enter: those that add up most of its lines; none where nothing does. */
function totalsFor(sheet: Sheet, side: Side): Total[] {
  const sides = sidesOf(sheet);
  const columns = sheet.columns.filter((column) => column === 'formula' || planOfColumn(column) !== undefined);
  const found = sheet.rows.flatMap((row) => columns.flatMap((column) => totalIn(row, column, sides, side) ?? []));
  const most = Math.max(0, ...found.map(({ lines }) => lines));
  return found.filter(({ lines }) => lines === most);
}

/** Whether a new line of a side would reach a total. */
export function hasTotal(sheet: Sheet, side: Side): boolean {
  return totalsFor(sheet, side).length > 0;
}

/** A sheet in which a line is a term of the formulas that add up its side of the budget. */
export function inTotals(sheet: Sheet, name: string, side: Side): Sheet {
  return totalsFor(sheet, side).reduce(
    (changed, { row, column, text, sign }) =>
      withFields(changed, row, { [column]: `${text} ${sign === 1 ? '+' : '-'} ${name}` }),
    sheet,
  );
}

/** A formula without a name that is a plain term of its sum, or undefined where the name stands elsewhere in it too. */
export function withoutTerm(text: string, name: string): string | undefined {
  const term = new RegExp(`(^|[+-])\\s*${name}(?![A-Za-z0-9_(])`, 'g');
  const understood = understand(text);
  if (understood.kind !== 'expression' || !termsOf(understood.expression).has(name)) return undefined;
  const matches = [...text.matchAll(term)].filter(({ index }) => isAtTop(text, index));
  if (matches.length !== 1) return undefined;
  const [{ 0: whole, index }] = matches as [RegExpExecArray];
  const rest = `${text.slice(0, index)}${text.slice(index + whole.length)}`.trim().replace(/^\+\s*/, '') || '0';
  const left = understand(rest);
  const isGone = left.kind === 'input' || (left.kind === 'expression' && !termsOf(left.expression).has(name));
  return isGone && !hasName(rest, name) ? rest : undefined;
}

/** Whether a place in a formula is inside no bracket, condition or product. */
function isAtTop(text: string, index: number): boolean {
  const before = text.slice(0, index);
  const depth = before.split('(').length - before.split(')').length;
  return depth === 0 && !/[?:<>=]|\b(?:and|or|not)\b/.test(text);
}
