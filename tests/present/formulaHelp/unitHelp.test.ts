import { describe, expect, it } from 'vitest';
import currencies from '../../../shared/currencies.json';
import checks from '../../../shared/checks/unitFactors.json';
import table from '../../../shared/units.json';
import { unitHelp } from '../../../src/present/formulaHelp/unitHelp';
import { exactly } from '../../formula/given';

const help = unitHelp();
const byName = new Map(help.flatMap(({ kind, units }) => units.map((unit) => [unit.name, { kind, ...unit }] as const)));

describe('the help on units', () => {
  it('has every unit of the table and every currency, each once', () => {
    const codes = Object.values(currencies.minorUnits).flatMap((text) => text.split(' '));
    const names = help.flatMap(({ units }) => units.map(({ name }) => name));
    expect(names.toSorted()).toEqual([...table.units.map(({ name }) => name), ...codes].toSorted());
  });

  // The kinds of the contract: model files, version 1, Units.
  it.each([
    ['clock time', 's min h'],
    ['crop time', 'day week'],
    ['year of the books', 'year month'],
    ['length', 'm mm cm km in ft yd'],
    ['area', 'ha acre'],
    ['volume', 'mL L gal'],
    ['mass', 'kg mg g t oz lb'],
    ['power', 'W kW'],
    ['energy', 'J kJ MJ Wh kWh'],
    ['temperature difference', 'K'],
    ['factor', '% thousand'],
  ])('puts units into their kinds, %s: %s', (kind, names) => {
    expect(help.find((one) => one.kind === kind)?.units.map(({ name }) => name)).toEqual(
      expect.arrayContaining(names.split(' ')),
    );
  });

  it('says what counts are', () => {
    expect(help.at(-1)).toMatchObject({ kind: 'count', note: expect.stringContaining('plant') as string, units: [] });
  });

  // Published factors: shared/checks/unitFactors.json names the source of each.
  const direct = checks.exact.filter(({ unit, base }) => byName.get(unit)?.base === base);

  it('has published factors to be held against', () => expect(direct.length).toBeGreaterThan(20));

  it.each(direct)('1 $unit is $factor $base ($source)', ({ unit, factor }) => {
    expect(byName.get(unit)?.factor).toBe(factor);
  });

  it.each([...byName.values()].filter(({ kind }) => kind !== 'currency'))(
    '$name is as many of its base as the engine converts it to',
    ({ name, factor, base }) => {
      expect(exactly('a', base, [['a', '1', name]])).toBe(exactly(factor));
    },
  );
});
