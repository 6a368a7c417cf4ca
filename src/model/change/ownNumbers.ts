import { wording } from '../../language/wording';
import { parseUnit, type Unit } from '../../core/unit';
import { checkFormula } from '../../formula/check';
import { mended } from '../../formula/mended';
import type { Cell } from '../cell';
import { understand } from '../formulaReader';
import type { Model } from '../model';
import { field, type Sheet, type SheetRow } from '../sheet';
import { amountsInFormula, type WrittenAmount } from './amountsInFormula';
import { nounsIn, planOfFormula, scopeOf } from './formulaScope';
import { freeName } from './rename';
import { newRow, nextRow, withFields, withRowsAfter } from './rows';

/** What the new entries are called and where their numbers come from. */
export interface OwnNumberWords {
  /** @param number the number's place among them, from 1 @param of how many there are */
  readonly label: (number: number, of: number) => string;
  readonly source: string;
}

/** A formula whose numbers have become entries. */
export interface OwnNumbers {
  readonly sheet: Sheet;
  readonly formula: string;
  /** The numbers as they stood there. */
  readonly numbers: readonly string[];
}

/** Fields that tell of a number, and go with it. */
const ofNumber = ['low', 'high', 'shape', 'step', 'correlation', 'source', 'choices'];

/** The formula with names in the place of amounts. @param names blank for what goes altogether */
function withNames(text: string, amounts: readonly WrittenAmount[], names: readonly string[]): string {
  const put = amounts.reduceRight(
    (changed, { from, to }, i) => changed.slice(0, from) + (names[i] ?? '') + changed.slice(to),
    text,
  );
  return put.trim().replace(/^\*\s*/, '');
}

/** The amount that is the number which filled the entry until now: it keeps its range and its source. */
function heirOf(row: SheetRow, amounts: readonly WrittenAmount[], column: string): WrittenAmount | undefined {
  if (column !== 'formula') return undefined;
  return amounts.find(({ number, unitText }) => number === field(row, 'formula') && unitText === field(row, 'unit'));
}

function namedIn(sheet: Sheet, cell: Cell, amounts: readonly WrittenAmount[]): string[] {
  let taken = sheet;
  return amounts.map(({ unitText }) => {
    if (unitText === '') return '';
    const name = freeName(taken, wording`${cell.name} part`);
    taken = { ...taken, rows: [...taken.rows, newRow(0, { name })] };
    return name;
  });
}

function entriesOf(
  { sheet, cell, row, column }: { sheet: Sheet; cell: Cell; row: SheetRow; column: string },
  amounts: readonly WrittenAmount[],
  names: readonly string[],
  words: OwnNumberWords,
  from?: Sheet,
): SheetRow[] {
  const heir = heirOf(row, amounts, column);
  const first = nextRow(sheet, from);
  const kept = amounts.flatMap((amount, i) => (amount.unitText === '' ? [] : [{ amount, name: names[i]! }]));
  return kept.map(({ amount, name }, i) => {
    const inherited = amount === heir ? Object.fromEntries(ofNumber.map((one) => [one, field(row, one)])) : {};
    return newRow(first + i, {
      name,
      label: words.label(i + 1, kept.length),
      unit: amount.unitText,
      formula: amount.number,
      group: cell.group,
      source: words.source,
      ...inherited,
    });
  });
}

/**
 * A sheet in which the amounts written into a formula are entries of their own, named in it; undefined where there are
 * none, or where the formula would still not do.
 */
export function withOwnNumbers(
  model: Model,
  cell: Cell,
  column: string,
  typed: string,
  words: OwnNumberWords,
  from?: Sheet,
): OwnNumbers | undefined {
  const { sheet } = model;
  const nouns = nounsIn(model);
  const text = mended(typed, 'decimal', (word) => model.ids.has(word));
  const row = sheet.rows.find((one) => one.row === cell.row);
  const amounts = amountsInFormula(text, cell.unitText, nouns);
  if (row === undefined || cell.unit === undefined || amounts.every(({ unitText }) => unitText === ''))
    return undefined;
  const names = namedIn(sheet, cell, amounts);
  const formula = withNames(text, amounts, names);
  const understood = understand(formula);
  const units = names.flatMap((name, i): [string, Unit][] => {
    const unit = parseUnit(amounts[i]!.unitText, nouns);
    return name === '' || 'code' in unit ? [] : [[name, unit]];
  });
  if (understood.kind !== 'expression') return undefined;
  const scope = scopeOf(model, planOfFormula(model, column), new Map(units));
  if ('code' in checkFormula(understood.expression, cell.unit, scope)) return undefined;
  const added = withRowsAfter(sheet, cell.row, entriesOf({ sheet, cell, row, column }, amounts, names, words, from));
  // What told of the number that stood there tells of none now.
  const gone = column === 'formula' ? ofNumber.filter((one) => field(row, one) !== '') : [];
  const cleared = Object.fromEntries(gone.map((one) => [one, '']));
  const filled = withFields(added, cell.row, { ...cleared, [column]: formula });
  const numbers = amounts.flatMap(({ number, unitText }) => (unitText === '' ? [] : [number]));
  return { sheet: filled, formula, numbers };
}
