import { wording } from '../../language/wording';
import type { Example, ExampleCell } from '../../formula/example';
import type { Runnable } from './runExample';

/** Something that formulas do not allow, and what to write instead. */
export interface Refusal {
  readonly what: string;
  readonly refused: Runnable;
  readonly instead: string;
  readonly example: Example;
}

const price: ExampleCell = ['price', '0.8', 'EUR/head'];
const discount: ExampleCell = ['discount', '5', '%'];
const heads: ExampleCell = ['heads', '5000', 'head/week'];
const market: ExampleCell = ['market', '4500', 'head/week'];
const least: ExampleCell = ['least', '1000', 'head/week'];
const weekHours: ExampleCell = ['week_hours', '40', 'h/week'];
const office: ExampleCell = ['office', '100', 'h/year'];
const seconds: ExampleCell = ['seconds', '12', 's/plant'];
const wage: ExampleCell = ['wage', '18', 'EUR/h'];
const kind: ExampleCell = ['media', '2', ''];
const batches: ExampleCell = ['batches', '17', ''];

/** Refusals about how a formula is written. */
const writing: readonly Refusal[] = [
  {
    what: wording`A sign or a name before what is computed`,
    refused: { formula: 'cost = seconds * wage', unit: 'EUR/plant', cells: [seconds, wage] },
    instead: wording`Give each result an entry of its own, and write only what is computed.`,
    example: { formula: 'seconds * wage', gives: '0.06', unit: 'EUR/plant', cells: [seconds, wage] },
  },
  {
    what: wording`A sign left out`,
    refused: { formula: '2 (heads + least)', unit: 'head/week', cells: [heads, least] },
    instead: wording`Write * to multiply.`,
    example: { formula: '2 * (heads + least)', gives: '12000', unit: 'head/week', cells: [heads, least] },
  },
  {
    what: wording`Signs of print`,
    refused: { formula: 'price × heads', unit: 'EUR/week', cells: [price, heads] },
    instead: wording`Write * / - and <= >= !=.`,
    example: { formula: 'price * heads', gives: '4000', unit: 'EUR/week', cells: [price, heads] },
  },
  {
    what: wording`A decimal comma`,
    refused: { formula: '1,5 * heads', unit: 'head/week', cells: [heads] },
    instead: wording`Write a point in formulas; the comma parts the values of a function.`,
    example: { formula: '1.5 * heads', gives: '7500', unit: 'head/week', cells: [heads] },
  },
  {
    what: wording`A plus before a value`,
    refused: { formula: '+heads', unit: 'head/week', cells: [heads] },
    instead: wording`Leave it out.`,
    example: { formula: 'heads', gives: '5000', unit: 'head/week', cells: [heads] },
  },
  {
    what: wording`A number of more than 15 digits`,
    refused: { formula: '3.1415926535897932 * 2' },
    instead: wording`Give it an input of its own, which may have 34.`,
    example: {
      formula: 'turn_of_a_wheel * 2',
      gives: '6.2831853071795864',
      cells: [['turn_of_a_wheel', '3.1415926535897932', '']],
    },
  },
  {
    what: wording`The rest of a division`,
    refused: { formula: 'batches mod 5', cells: [batches] },
    instead: wording`Take the whole part away.`,
    example: { formula: 'batches - 5 * floor(batches / 5)', gives: '2', cells: [batches] },
  },
  {
    what: wording`Text in quotes`,
    refused: { formula: 'media == "reusable" ? 1 : 0', cells: [kind] },
    instead: wording`Let a number stand for each kind, and compare it.`,
    example: { formula: 'media == 2 ? 1 : 0', gives: '1', cells: [kind] },
  },
  {
    what: wording`Lists, tables and spans`,
    refused: { formula: 'max([heads, market])', unit: 'head/week', cells: [heads, market] },
    instead: wording`Name each entry.`,
    example: { formula: 'max(heads, market)', gives: '5000', unit: 'head/week', cells: [heads, market] },
  },
];

/** Refusals about units. */
const units: readonly Refusal[] = [
  {
    what: wording`A per cent sign`,
    refused: { formula: 'price * (1 - 5 %)', unit: 'EUR/head', cells: [price] },
    instead: wording`Give an entry the unit % and write its name alone.`,
    example: { formula: 'price * (1 - discount)', gives: '0.76', unit: 'EUR/head', cells: [price, discount] },
  },
  {
    what: wording`A unit in a formula`,
    refused: { formula: 'week_hours * 52 week', unit: 'h', cells: [weekHours] },
    instead: wording`Give the number an entry of its own with that unit.`,
    example: { formula: 'week_hours * weeks', gives: '2080', unit: 'h', cells: [weekHours, ['weeks', '52', 'week']] },
  },
  {
    what: wording`A change of one time into another`,
    refused: { formula: 'office + week_hours', unit: 'h/year', cells: [office, weekHours] },
    instead: wording`Say how many weeks a year has: it is an entry in week/year.`,
    example: {
      formula: 'office + week_hours * weeks_a_year',
      gives: '2180',
      unit: 'h/year',
      cells: [office, weekHours, ['weeks_a_year', '52', 'week/year']],
    },
  },
  {
    what: wording`A sum of two kinds, such as money a head and money an hour`,
    refused: { formula: 'price + wage', unit: 'EUR/head', cells: [price, wage] },
    instead: wording`Bring both to one kind first, by what one takes of the other.`,
    example: {
      formula: 'price + wage * packing',
      gives: '0.9',
      unit: 'EUR/head',
      cells: [price, wage, ['packing', '20', 's/head']],
    },
  },
];

/** Refusals about true and false. */
const conditions: readonly Refusal[] = [
  {
    what: wording`Comparisons in a chain`,
    refused: { formula: 'least < heads < market', cells: [least, heads, market] },
    instead: wording`Join two comparisons by and.`,
    example: { formula: 'least < heads and heads < market', gives: 'false', cells: [least, heads, market] },
  },
  {
    what: wording`A bare not before a comparison`,
    refused: { formula: 'not heads > market', cells: [heads, market] },
    instead: wording`Put the comparison in brackets.`,
    example: { formula: 'not (heads > market)', gives: 'false', cells: [heads, market] },
  },
  {
    what: wording`Other signs for and, or, not`,
    refused: { formula: 'heads > least && heads < market', cells: [least, heads, market] },
    instead: wording`Write the words.`,
    example: { formula: 'heads > least and heads < market', gives: 'false', cells: [least, heads, market] },
  },
  {
    what: wording`A number as a condition`,
    refused: { formula: 'batches ? 1 : 0', cells: [batches] },
    instead: wording`Compare it with something.`,
    example: { formula: 'batches > 0 ? 1 : 0', gives: '1', cells: [batches] },
  },
  {
    what: wording`A condition as a number`,
    refused: { formula: '(heads > market) * price', unit: 'EUR/head', cells: [heads, market, price] },
    instead: wording`Choose by it.`,
    example: { formula: 'heads > market ? price : 0', gives: '0.8', unit: 'EUR/head', cells: [heads, market, price] },
  },
  {
    what: wording`The words true and false`,
    refused: { formula: 'batches > 0 or true', cells: [batches] },
    instead: wording`Leave them out: a comparison is true or false by itself.`,
    example: { formula: 'batches > 0', gives: 'true', cells: [batches] },
  },
];

/** Every refusal that a person is likely to meet, by subject. */
export const refusals: readonly Refusal[] = [...writing, ...units, ...conditions];
