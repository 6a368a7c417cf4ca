import { wording } from '../../language/wording';
import { withoutEntry } from './entries';
import { fittedRange, type RangeTexts } from './ranges';
import { freeName } from './rename';
import { groupOfRow, newRow, nextRow, withFields, withRowsAfter } from './rows';
import { standingName } from './standingName';
import type { Cell } from '../cell';
import { isNumber, isWrittenNumber, readNumber } from '../readNumber';
import { field, withField, type Sheet, type SheetRow } from '../sheet';

/** A price that holds from a quantity on; numbers as a file writes them. */
export interface PriceStep {
  readonly from: string;
  readonly price: string;
}

/** Labels of what a price by quantity is made from. */
export interface StepLabels {
  readonly first: string;
  readonly from: (step: number) => string;
  readonly price: (step: number) => string;
  /** Said where the steps do not rise. */
  readonly rise: string;
}

/**
 * A price that depends on the quantity bought: in force is the price of the highest step that the quantity reaches, for
 * all that is bought (an all-units discount; common practice of sellers, no source).
 */
export interface StepPrice {
  readonly label: string;
  /** Money for one of what is bought. */
  readonly unit: string;
  readonly quantity: Pick<Cell, 'name' | 'row' | 'unitText'>;
  /** The price below the first step. */
  readonly first: string;
  /** Steps 2, 3 and so on, rising. */
  readonly steps: readonly PriceStep[];
  readonly labels: StepLabels;
  readonly source: string;
  /** The entry that becomes this price and keeps its name, so that formulas follow; undefined for a new one. */
  readonly inPlaceOf: Pick<Cell, 'name' | 'row'> | undefined;
}

/** The entries that a price by quantity is made from, by name. */
export interface StepNames {
  readonly quantity: string;
  readonly first: string;
  readonly steps: readonly { readonly from: string; readonly price: string }[];
}

/** The price of the step reached, the highest step asked about first. */
export function stepFormula({ quantity, first, steps }: StepNames): string {
  const conditions = steps.map(({ from, price }) => `${quantity} >= ${from} ? ${price} : `);
  return conditions.reverse().join('') + first;
}

const condition = /^(?<quantity>[a-z]\w*) >= (?<from>[a-z]\w*) \? (?<price>[a-z]\w*)$/;

/** The entries of a price by quantity, from its formula; undefined for any other formula. */
export function readStepFormula(formula: string): StepNames | undefined {
  const parts = formula.split(' : ');
  const first = parts.pop() ?? '';
  const read = parts.map((part) => condition.exec(part)?.groups);
  const quantity = read[0]?.quantity;
  if (quantity === undefined || !/^[a-z]\w*$/.test(first)) return undefined;
  const steps = read.flatMap((groups) =>
    groups?.quantity === quantity ? [{ from: groups.from ?? '', price: groups.price ?? '' }] : [],
  );
  return steps.length === parts.length ? { quantity, first, steps: steps.reverse() } : undefined;
}

/** What tells how a price varies: it goes from a price that becomes a formula to the price below the first step. */
const ofInputs = ['low', 'high', 'shape', 'step', 'correlation', 'source', 'note'] as const;

/** Builds a sheet entry by entry, each behind the one before. */
class Writing {
  constructor(
    public sheet: Sheet,
    public last: number,
    private readonly group: string,
    private readonly file: Sheet | undefined,
  ) {}

  add(wish: string, texts: Readonly<Record<string, string>>): string {
    const row = nextRow(this.sheet, this.file);
    const name = freeName(this.sheet, wish);
    this.sheet = withRowsAfter(this.sheet, this.last, [newRow(row, { name, group: this.group, ...texts })]);
    this.last = row;
    return name;
  }

  /** Sets the number of an entry that is there already, and stands behind it. */
  set(name: string, formula: string, source: string): string {
    const found = this.sheet.rows.find((row) => field(row, 'name') === name);
    if (found === undefined) return name;
    if (field(found, 'formula') !== formula) this.sheet = withFields(this.sheet, found.row, { formula, source });
    this.last = found.row;
    return name;
  }
}

/** A sheet in which correlations with one entry are with another. */
function withTiesMoved(sheet: Sheet, from: string, to: string): Sheet {
  const rows = sheet.rows.map((row) => {
    const text = field(row, 'correlation');
    const moved = text.replaceAll(standingName(from), to);
    return moved === text ? row : withField(row, 'correlation', moved);
  });
  return { ...sheet, rows };
}

/** The range of a price that now stands outside of it, moved there; nothing where it need not move. */
function fittedTo(old: SheetRow, unitText: string, first: string): Partial<RangeTexts> {
  const [low, high, value] = [field(old, 'low'), field(old, 'high'), first].map(readNumber);
  if (low === undefined || high === undefined || value === undefined) return {};
  if (!isNumber(low) || !isNumber(high) || !isNumber(value) || (value.gte(low) && value.lte(high))) return {};
  return fittedRange({ unitText, range: { low, high, shape: 'triangular' } }, value) ?? {};
}

/** The first price takes over what was said of the price that it comes from. */
function withFirst(writing: Writing, price: StepPrice, base: string): string {
  const { inPlaceOf, first, unit, labels, source } = price;
  const old = writing.sheet.rows.find(({ row }) => row === inPlaceOf?.row);
  const wasInput = old !== undefined && isWrittenNumber(field(old, 'formula'));
  const kept = wasInput ? Object.fromEntries(ofInputs.map((column) => [column, field(old, column)])) : {};
  const range = wasInput ? fittedTo(old, unit, first) : {};
  const isSame = wasInput && Number(field(old, 'formula')) === Number(first);
  const name = writing.add(`${base} 1`, {
    label: labels.first,
    unit,
    formula: first,
    ...kept,
    ...range,
    source: isSame ? (kept.source ?? '') : source,
  });
  if (wasInput && inPlaceOf !== undefined) {
    writing.sheet = withFields(
      withTiesMoved(writing.sheet, inPlaceOf.name, name),
      inPlaceOf.row,
      Object.fromEntries(ofInputs.map((column) => [column, ''])),
    );
  }
  return name;
}

/** The condition that every step lies above the one before. */
function riseFormula(steps: StepNames['steps']): string {
  const [lowest] = steps;
  const pairs = steps.slice(1).map(({ from }, i) => `${steps[i]?.from ?? ''} < ${from}`);
  return [`${lowest?.from ?? '0'} > 0`, ...pairs].join(' and ');
}

/** The check on the steps of a price, where the sheet has one. */
function checkOf({ rows }: Sheet, { steps }: StepNames): number | undefined {
  return rows.find((row) => field(row, 'role') === 'check' && field(row, 'formula') === riseFormula(steps))?.row;
}

function withSteps(writing: Writing, price: StepPrice, base: string, known: StepNames | undefined): StepNames {
  const { quantity, unit, labels, source } = price;
  const first = known === undefined ? withFirst(writing, price, base) : writing.set(known.first, price.first, source);
  const steps = price.steps.map((step, i) => {
    const there = known?.steps[i];
    if (there !== undefined) {
      return { from: writing.set(there.from, step.from, source), price: writing.set(there.price, step.price, source) };
    }
    const number = i + 2;
    const from = { label: labels.from(number), unit: quantity.unitText, formula: step.from, source };
    const each = { label: labels.price(number), unit, formula: step.price, source };
    return { from: writing.add(wording`${base} ${number} from`, from), price: writing.add(`${base} ${number}`, each) };
  });
  return { quantity: quantity.name, first, steps };
}

/** A sheet without the entries of the steps that a price by quantity no longer has. */
function withoutSteps(sheet: Sheet, known: StepNames | undefined, left: number): Sheet {
  const gone = (known?.steps ?? []).slice(left).flatMap(({ from, price }) => [from, price]);
  return gone.reduce((before, name) => {
    const row = before.rows.find((one) => field(one, 'name') === name);
    return row === undefined ? before : withoutEntry(before, row.row);
  }, sheet);
}

/**
 * A sheet with a price by quantity: an entry for the first price and two for each step; the price in force, made from
 * them by a formula; and a check that the steps rise. Of an entry that is such a price already the steps are changed,
 * added and taken away.
 * @param from the sheet of the file, whose row numbers are not given to others
 */
export function withStepPrice(sheet: Sheet, price: StepPrice, from?: Sheet): { sheet: Sheet; row: number } {
  const { inPlaceOf, quantity, label, unit, labels } = price;
  const old = sheet.rows.find(({ row }) => row === inPlaceOf?.row);
  const known = old && readStepFormula(field(old, 'formula'));
  const oldCheck = known && checkOf(sheet, known);
  const after = old?.row ?? quantity.row;
  const writing = new Writing(sheet, after, groupOfRow(sheet, after), from);
  const base = inPlaceOf?.name ?? freeName(sheet, label);
  const names = withSteps(writing, price, base, known);
  const formula = stepFormula(names);
  const check = riseFormula(names.steps);
  let row = inPlaceOf?.row ?? 0;
  if (inPlaceOf === undefined) {
    writing.add(label, { label, unit, formula });
    row = writing.last;
  } else writing.sheet = withFields(writing.sheet, inPlaceOf.row, { formula, source: '' });
  if (oldCheck !== undefined) writing.sheet = withFields(writing.sheet, oldCheck, { formula: check });
  else writing.add(wording`${base} steps rise`, { label: labels.rise, formula: check, role: 'check' });
  return { sheet: withoutSteps(writing.sheet, known, price.steps.length), row };
}
