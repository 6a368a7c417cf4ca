import { describe as group, expect, it } from 'vitest';
import currencies from '../../shared/currencies.json';
import units from '../../shared/units.json';
import { describe } from '../../src/core/dimension';
import { isCurrency, minorDigits, nounsOf, parseUnit, type Unit } from '../../src/core/unit';

const nouns = new Set(['plant', 'board', 'bed', 'leaf', 'box', 'tray', 'berry', 'seed_tray']);

function read(text: string): Unit {
  const unit = parseUnit(text, nouns);
  if ('code' in unit) throw new Error(unit.message);
  return unit;
}

function faultIn(text: string): string {
  const unit = parseUnit(text, nouns);
  return 'code' in unit ? unit.message : `read as ${describe(unit.dimension)}`;
}

group('a unit', () => {
  it.each<[text: string, dimension: string, over: string, under: string]>([
    ['', 'a plain number', '1', '1'],
    ['1', 'a plain number', '1', '1'],
    ['plant', 'plant', '1', '1'],
    ['seed_tray', 'seed_tray', '1', '1'],
    ['s/plant', 's/plant', '1', '1'],
    ['EUR/h', 'EUR/s', '1', '3600'],
    ['plant/board', 'plant/board', '1', '1'],
    ['EUR/m^2/year', 'EUR/m^2/year', '1', '1'],
    ['EUR/m^2/month', 'EUR/m^2/year', '12', '1'],
    ['1/year', '1/year', '1', '1'],
    ['%/year', '1/year', '1', '100'],
    ['%', 'a plain number', '1', '100'],
    ['%^2', 'a plain number', '1', '10000'],
    ['thousand*plant', 'plant', '1000', '1'],
    ['EUR/plant*board', 'EUR*board/plant', '1', '1'],
    ['plant^-1', '1/plant', '1', '1'],
    ['1/m^-2', 'm^2', '1', '1'],
    ['m^9', 'm^9', '1', '1'],
    ['h/min', 'a plain number', '60', '1'],
    ['plant/plant', 'a plain number', '1', '1'],
    ['week', 'day', '7', '1'],
    ['month', 'year', '1', '12'],
    ['kW*h', 'W*s', '3600000', '1'],
    ['kWh', 'W*s', '3600000', '1'],
    ['L', 'm^3', '1', '1000'],
    ['ha', 'm^2', '10000', '1'],
    ['EUR/kWh', 'EUR/W/s', '1', '3600000'],
    ['K', 'K', '1', '1'],
  ])('%j is %s, scale %s/%s', (text, dimension, over, under) => {
    const { dimension: found, scale } = read(text);
    expect([describe(found), `${scale.over}/${scale.under}`]).toEqual([dimension, `${over}/${under}`]);
  });

  it.each<[spaced: string, tight: string]>([
    ['EUR / h', 'EUR/h'],
    ['EUR /m ^ 2/ year', 'EUR/m^2/year'],
    ['plant * board', 'plant*board'],
  ])('may have spaces around its marks: %s', (spaced, tight) => {
    expect(read(spaced)).toEqual({ ...read(tight), text: spaced });
  });

  it('never turns one of the three times into another', () => {
    const times = ['h', 'week', 'month'].map((text) => describe(read(text).dimension));
    expect(new Set(times).size).toBe(3);
  });

  // Model files, version 1: a model may use these, so that none of them can go.
  const contract =
    's min h day week year month mm cm m km in ft yd ha acre mL L gal mg g kg t oz lb W kW J kJ MJ Wh kWh K % thousand';

  it.each(contract.split(' '))('of the contract is known: %s', (name) => expect(faultIn(name)).toMatch(/^read as/));

  it.each(units.units)('of the table is known, and by no other name: $name', ({ name }) => {
    expect(faultIn(name)).toMatch(/^read as/);
    expect(units.units.filter((unit) => unit.name === name)).toHaveLength(1);
    expect(Object.keys(units.mistaken)).not.toContain(name);
    expect(minorDigits(name)).toBeUndefined();
  });
});

group('a unit’s fault names the right word', () => {
  it.each<[text: string, right: string]>([
    ['hour', 'h'],
    ['hours', 'h'],
    ['hr', 'h'],
    ['hrs', 'h'],
    ['Hour', 'h'],
    ['sec', 's'],
    ['seconds', 's'],
    ['minutes', 'min'],
    ['mins', 'min'],
    ['days', 'day'],
    ['weeks', 'week'],
    ['months', 'month'],
    ['years', 'year'],
    ['litre', 'L'],
    ['liters', 'L'],
    ['l', 'L'],
    ['KG', 'kg'],
    ['kgs', 'kg'],
    ['tonnes', 't'],
    ['metres', 'm'],
    ['feet', 'ft'],
    ['acres', 'acre'],
    ['hectares', 'ha'],
    ['euro', 'EUR'],
    ['euros', 'EUR'],
    ['eur', 'EUR'],
    ['percent', '%'],
    ['plants', 'plant'],
    ['boards', 'board'],
    ['leaves', 'leaf'],
    ['boxes', 'box'],
    ['trays', 'tray'],
    ['berries', 'berry'],
  ])('%s: write %s', (text, right) => {
    expect(faultIn(text)).toBe(`unit not known: ${text}. Write ${right}.`);
    expect(faultIn(`EUR/${text}`)).toBe(`unit not known: ${text}. Write ${right}.`);
  });

  it.each<[text: string, near: string]>([
    ['plnt', 'plant'],
    ['Plant', 'plant'],
    ['bord', 'board'],
    ['EURO', 'EUR'],
  ])('%s: nearest is %s', (text, near) => expect(faultIn(text)).toContain(near));

  it('says what a unit may be where nothing is near', () => {
    expect(faultIn('wheelbarrow')).toBe(
      'unit not known: wheelbarrow. Use a known unit, a currency code or a noun that an input counts.',
    );
  });

  it.each([
    'EUR per h',
    'EUR//h',
    '/h',
    'EUR/',
    'EUR*',
    'm2',
    'm^',
    'm^2^2',
    'm^1.5',
    'm^x',
    '(EUR)',
    '2*m',
    '°C',
    '€',
    'm h',
    'm^100',
    '-1',
    'm^+2',
  ])('%j cannot be read', (text) => expect(faultIn(text)).toContain(`unit not readable: ${text}. Join names by`));

  it('refuses a plural even where an input counts it, once the singular is known', () => {
    const both = new Set(['plant', 'plants']);
    expect(parseUnit('plants', both)).toMatchObject({ code: 'unit-name', where: { text: 'plants' } });
    expect(parseUnit('plants', new Set(['plants']))).toMatchObject({ text: 'plants' });
  });

  it.each(['constructor', '__proto__', 'toString', 'hasOwnProperty', 'valueOf'])('%s is no unit', (text) =>
    expect(faultIn(text)).toMatch(/^unit not (known|readable)/),
  );
});

group('nouns', () => {
  it.each<[text: string, found: string[]]>([
    ['s/plant', ['plant']],
    ['plant/board', ['plant', 'board']],
    ['EUR/m^2/year', []],
    ['seed_tray', ['seed_tray']],
    ['hour', []],
    ['days', []],
    ['Plant', []],
    ['plant per board', []],
    ['constructor', ['constructor']],
  ])('of %s: %j', (text, found) => expect(nounsOf(text)).toEqual(found));
});

group('currencies', () => {
  it.each<[code: string, digits: number | undefined]>([
    ['EUR', 2],
    ['USD', 2],
    ['JPY', 0],
    ['KWD', 3],
    ['eur', undefined],
    ['XXX', undefined],
    ['plant', undefined],
  ])('%s has %s minor digits', (code, digits) => {
    expect(minorDigits(code)).toBe(digits);
    expect(isCurrency(code)).toBe(digits !== undefined);
  });

  it('are each a dimension of its own', () => {
    expect(describe(read('EUR/USD').dimension)).toBe('EUR/USD');
  });

  it('are three capital letters, each once', () => {
    const codes = Object.values(currencies.minorUnits).flatMap((text) => text.split(' '));
    expect(codes.filter((code) => !/^[A-Z]{3}$/.test(code))).toEqual([]);
    expect(new Set(codes).size).toBe(codes.length);
  });
});
