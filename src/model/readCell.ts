import { wording } from '../language/wording';
import type { Decimal } from '../core/number';
import { placed, problem, type Problem } from '../core/problem';
import { shortened } from '../core/shortened';
import { parseUnit } from '../core/unit';
import { functions } from '../formula/functions';
import {
  shapes,
  type Budget,
  type Cell,
  type Correlation,
  type NamedChoice,
  type Range,
  type Role,
  type Shape,
} from './cell';
import { choiceRangeFault, readChoices } from './choices';
import { isNumber, readNumber } from './readNumber';
import { field, type SheetRow } from './sheet';

const reserved = new Set('and or not mod xor to in true false null undefined end'.split(' '));
/** Most characters of a cell's name. */
const longestName = 100;
/** Most correlations that a cell may name. */
const mostClaims = 300;
/** Faults that are told of the correlations of one cell. */
const mostTold = 20;
const roles: readonly Role[] = ['', 'headline', 'check'];
const budgets: readonly Budget[] = ['', 'return', 'cost'];

/** Collects the faults of one record, each placed in its column. */
export class RowFaults {
  readonly found: Problem[] = [];

  constructor(private readonly row: SheetRow) {}

  add(column: string, fault: Problem): undefined {
    this.found.push(placed(fault, { row: this.row.row, column, cell: field(this.row, 'name') }));
    return undefined;
  }
}

/** What is wrong with a cell's name, or undefined. */
export function nameFault(name: string): Problem | undefined {
  if (name.length > longestName) {
    const message = wording`name too long: ${shortened(name)}. Use at most ${longestName} characters.`;
    return problem('name-text', message, { text: name });
  }
  if (!/^[a-z][a-z0-9_]*$/.test(name)) {
    return problem(
      'name-text',
      wording`name not allowed: ${name}. Use small letters, digits and _, beginning with a letter.`,
      { text: name },
    );
  }
  if (functions.has(name) || reserved.has(name)) {
    return problem(
      'name-taken',
      wording`name has a meaning in formulas: ${name}. Choose another, such as ${name}_value.`,
      {
        text: name,
      },
    );
  }
  return undefined;
}

function oneOf<T extends string>(row: SheetRow, column: string, known: readonly T[], faults: RowFaults): T | undefined {
  const text = field(row, column);
  const found = known.find((word) => word === text);
  if (found !== undefined) return found;
  const words = known.filter((word) => word !== '').join(', ');
  return faults.add(
    column,
    problem(`${column}-unknown`, wording`${column} not known: ${shortened(text)}. Leave it blank or use ${words}.`, {
      text,
    }),
  );
}

function numberIn(row: SheetRow, column: string, faults: RowFaults): Decimal | undefined {
  const text = field(row, column);
  if (text === '') return undefined;
  const read = readNumber(text);
  return isNumber(read) ? read : faults.add(column, read);
}

function readRange(row: SheetRow, faults: RowFaults): Range | undefined {
  const texts = [field(row, 'low'), field(row, 'high')] as const;
  const shape = readShape(row, faults);
  const low = numberIn(row, 'low', faults);
  const high = numberIn(row, 'high', faults);
  if ((texts[0] === '') !== (texts[1] === '')) {
    const column = texts[0] === '' ? 'low' : 'high';
    const text = texts[0] || texts[1];
    return faults.add(
      column,
      problem('range-half', wording`half a range: ${text}. Give ${column} as well, or neither.`, { text }),
    );
  }
  if (low === undefined || high === undefined) return undefined;
  if (low.gt(high)) {
    return faults.add(
      'low',
      problem('range-order', wording`low above high: ${texts.join(' > ')}. Swap them.`, { text: texts[0] }),
    );
  }
  if (shape === 'lognormal' && low.lte(0)) {
    return faults.add(
      'low',
      problem(
        'range-lognormal',
        wording`lognormal range not above 0: ${texts[0]}. Raise low or choose another shape.`,
        {
          text: texts[0],
        },
      ),
    );
  }
  return { low, high, shape };
}

function readShape(row: SheetRow, faults: RowFaults): Shape {
  if (field(row, 'shape') === '') return 'triangular';
  return oneOf<Shape>(row, 'shape', shapes, faults) ?? 'triangular';
}

function readStep(row: SheetRow, faults: RowFaults): Decimal | undefined {
  const step = numberIn(row, 'step', faults);
  if (step === undefined || step.gt(0)) return step;
  const text = field(row, 'step');
  return faults.add(
    'step',
    problem('step', wording`step not above 0: ${text}. Give the smallest sensible change.`, { text }),
  );
}

function readCorrelations(row: SheetRow, faults: RowFaults): Correlation[] {
  const text = field(row, 'correlation');
  if (text === '') return [];
  const claims = text
    .split(';', mostClaims + 1)
    .map((claim) => claim.trim())
    .filter(Boolean);
  if (claims.length > mostClaims) {
    const what = wording`too many correlations of one input: ${shortened(text)}. At most ${mostClaims} may be named; take some out.`;
    faults.add('correlation', problem('correlation-many', what, { text: shortened(text) }));
    return [];
  }
  let told = 0;
  return claims.flatMap((claim) => {
    const [other = '', rankText = '', ...rest] = claim.split(/\s+/);
    const rank = readNumber(rankText);
    if (rest.length === 0 && isNumber(rank) && rank.abs().lt(1)) return [{ other, rank: rank.toNumber() }];
    const fix = wording`Write a name and a number between -1 and 1, as in price 0.6; several are parted by ;.`;
    told += 1;
    if (told > mostTold) return [];
    faults.add(
      'correlation',
      problem('correlation-text', wording`correlation not readable: ${shortened(claim)}. ${fix}`, { text: claim }),
    );
    return [];
  });
}

function choicesIn(row: SheetRow, range: Range | undefined, faults: RowFaults): readonly NamedChoice[] {
  const { choices, faults: found } = readChoices(field(row, 'choices'));
  for (const fault of found) faults.add('choices', fault);
  const ofRange = choiceRangeFault({ choices, range });
  if (ofRange !== undefined) faults.add('low', ofRange);
  return choices;
}

function readUnit(row: SheetRow, nouns: ReadonlySet<string>, faults: RowFaults): Pick<Cell, 'unit' | 'unitFault'> {
  const unit = parseUnit(field(row, 'unit'), nouns);
  if (!('code' in unit)) return { unit, unitFault: undefined };
  return { unit: faults.add('unit', unit), unitFault: unit };
}

/**
 * Reads everything of a record but its formulas.
 * @param nouns the count nouns that the model's inputs make known
 */
export function readCell(row: SheetRow, id: number, nouns: ReadonlySet<string>, faults: RowFaults): Cell {
  const name = field(row, 'name');
  const unit = readUnit(row, nouns, faults);
  const range = readRange(row, faults);
  return {
    id,
    row: row.row,
    name,
    label: field(row, 'label') || name.replaceAll('_', ' '),
    ...unit,
    unitText: field(row, 'unit'),
    range,
    hasRangeText: field(row, 'low') !== '' || field(row, 'high') !== '',
    step: readStep(row, faults),
    group: field(row, 'group'),
    role: oneOf(row, 'role', roles, faults) ?? '',
    budget: oneOf(row, 'budget', budgets, faults) ?? '',
    crop: field(row, 'crop'),
    correlations: readCorrelations(row, faults),
    choices: choicesIn(row, range, faults),
    note: field(row, 'note'),
  };
}
