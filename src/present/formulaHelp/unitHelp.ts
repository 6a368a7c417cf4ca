import { wording } from '../../language/wording';
import currencies from '../../../shared/currencies.json';
import table from '../../../shared/units.json';
import { describe } from '../../core/dimension';
import { parseUnit } from '../../core/unit';

/** A unit as a person reads of it. */
export interface UnitHelp {
  readonly name: string;
  /** One of it is so many of `base`: an exact decimal, or a fraction such as `1/12`. */
  readonly factor: string;
  /** Blank for a factor of plain numbers. */
  readonly base: string;
}

/** Units that convert into one another. */
export interface UnitKind {
  readonly kind: string;
  readonly note: string;
  readonly units: readonly UnitHelp[];
}

/**
 * Kinds in the order in which they are read: what a unit's base kinds are (blank for a plain number), how it is called,
 * its base in words.
 */
const kinds: readonly (readonly [dimension: string, kind: string, base: string, note: string])[] = [
  ['s', wording`clock time`, 's', wording`Seconds and hours of hands and machines.`],
  ['day', wording`crop time`, 'day', wording`How long plants stand. Never turns into clock time or years by itself.`],
  [
    'year',
    wording`year of the books`,
    'year',
    wording`What a budget counts by. How many weeks it has is an entry: 52 week/year.`,
  ],
  ['m', wording`length`, 'm', wording`To a power it is an area or a volume: m^2, ft^3.`],
  ['m^2', wording`area`, 'm^2', wording`Powers of lengths as well. The acre is the international one.`],
  ['m^3', wording`volume`, 'm^3', wording`Powers of lengths as well. The gallon is that of the United States.`],
  ['kg', wording`mass`, 'kg', ''],
  ['W', wording`power`, 'W', wording`Power times clock time is energy.`],
  ['W*s', wording`energy`, 'J', ''],
  ['K', wording`temperature difference`, 'K', wording`Degrees warmer or colder, not a reading of a thermometer.`],
  ['', wording`factor`, '', wording`Stands for a plain number: 5 % is 0.05, and 2 thousand*plant is 2000 plant.`],
];

interface Measured extends UnitHelp {
  readonly dimension: string;
}

function measured({ name, factor }: { readonly name: string; readonly factor: string }): Measured {
  const unit = parseUnit(name, new Set());
  if ('code' in unit) throw new Error(unit.message);
  const dimension = unit.dimension.size === 0 ? '' : describe(unit.dimension);
  const base = kinds.find(([known]) => known === dimension)?.[2] ?? dimension;
  return { name, factor, base, dimension };
}

function unitsOf(dimension: string, all: readonly Measured[]): UnitHelp[] {
  const members = all.filter((unit) => unit.dimension === dimension);
  return members.map(({ name, factor, base }) => ({ name, factor, base }));
}

function currencyKind(): UnitKind {
  const codes = Object.values(currencies.minorUnits).flatMap((text) => text.split(' '));
  const units = codes.toSorted().map((name) => ({ name, factor: '1', base: name }));
  return {
    kind: wording`currency`,
    note: wording`ISO 4217 codes. None turns into another: a rate is an entry in USD/EUR.`,
    units,
  };
}

const counts: UnitKind = {
  kind: wording`count`,
  note: wording`Any other noun in small letters, one of it: plant, head, board, bed, plug. It is known once it stands in the unit of an input.`,
  units: [],
};

/** Every unit by kind; a kind that has no name of its own goes by its base units. */
export function unitHelp(): UnitKind[] {
  const all = table.units.map(measured);
  const named = kinds.map(([dimension, kind, , note]) => ({ kind, note, units: unitsOf(dimension, all) }));
  const others = new Set(
    all.map(({ dimension }) => dimension).filter((one) => !kinds.some(([known]) => known === one)),
  );
  const unnamed = [...others].map((dimension) => ({ kind: dimension, note: '', units: unitsOf(dimension, all) }));
  return [...named, ...unnamed, currencyKind(), counts];
}
