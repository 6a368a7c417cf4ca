import { readdirSync, readFileSync } from 'node:fs';

/** A model in a state that nobody wants and somebody will have. */
export interface BadState {
  readonly name: string;
  readonly text: string;
}

type Table = readonly (readonly string[])[];

const field = /(?:"((?:[^"]|"")*)"|([^",\n]*))(,|\n|$)/y;

/** The records of a shipped model, which has commas, line feeds and sound quotes. */
function tableOf(text: string): string[][] {
  const table: string[][] = [[]];
  field.lastIndex = 0;
  for (let found = field.exec(text); found !== null && field.lastIndex <= text.length; found = field.exec(text)) {
    table.at(-1)!.push(found[1]?.replaceAll('""', '"') ?? found[2] ?? '');
    if (found[3] === '\n') table.push([]);
    if (field.lastIndex === text.length) break;
  }
  return table.filter((row) => row.length > 1);
}

function textOf(table: Table): string {
  const quoted = (text: string): string => (/[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  return table.map((row) => `${row.map(quoted).join(',')}\n`).join('');
}

/** A field of a table and what is to stand in it. */
type Change = (text: string, column: string, row: readonly string[]) => string;

function changed([head = [], ...rows]: Table, change: Change): Table {
  return [head, ...rows.map((row) => row.map((text, i) => change(text, head[i] ?? '', row)))];
}

const isNumber = (text: string): boolean => /^-?[\d.]+(?:e[+-]?\d+)?$/.test(text);

/** Columns that hold numbers or formulas of a cell. */
const holdsValues = (column: string): boolean => column === 'formula' || column.startsWith('plan: ');

/** Every number that is typed in the model, and every plan's own, replaced. */
const everyInput =
  (number: string): Change =>
  (text, column) =>
    holdsValues(column) && isNumber(text) ? number : text;

/** One input replaced, in all plans. */
const oneInput =
  (name: string, number: string): Change =>
  (text, column, row) =>
    row[0] === name && holdsValues(column) && isNumber(text) ? number : text;

const rightToLeft = 'כמה צמחים (ליום)? 3.5';

const odd: Readonly<Record<string, Change>> = {
  'blank names': (text, column) => (column === 'name' && text.length % 3 === 0 ? '' : text),
  'units that fail': (text, column) => (column === 'unit' && text.includes('/') ? 'parsec/fortnight' : text),
  'a circle': (text, column, row) => (column === 'formula' && row[0] === 'wage' ? 'margin + cost_per_plant' : text),
  'no headline': (text, column) => (column === 'role' ? '' : text),
  'nothing computes': (text, column) => (column === 'formula' && text !== '' && !isNumber(text) ? `${text} +` : text),
  'labels of 300 characters': (text, column) =>
    column === 'label' && text !== '' ? text.padEnd(300, ' longer') : text,
  'labels right to left': (text, column) => (['label', 'group', 'note'].includes(column) ? rightToLeft : text),
  'choices out of range': (text, column, row) =>
    holdsValues(column) && row.some((other) => /^1 [^;]+; 2 /.test(other)) ? '7.5' : text,
  'ranges of nothing': (text, column, row) => (column === 'low' || column === 'high' ? (text && row[3]) || '' : text),
  'ranges without end': (text, column) =>
    text === '' ? text : column === 'low' ? '-1e300' : column === 'high' ? '1e300' : text,
  'a plan of zeros': (text, column) => (column.startsWith('plan: ') && isNumber(text) ? '0' : text),
  'labels in braces and marks': (text, column) =>
    column === 'label' && text !== '' ? `<b>{${text}}</b> 100 %?` : text,
};

function onePlan(table: Table): Table {
  const kept = table[0]!.flatMap((column, i) => (column.startsWith('plan: ') ? [] : [i]));
  return table.map((row) => kept.map((i) => row[i]!));
}

/** Numbers that no farm has. */
export const badNumbers = ['1e300', '1e-300', '-1', '0', '1e15', '0.0000001'] as const;

/** The shipped models, by name, as text. */
export function shippedTexts(): [name: string, text: string][] {
  const names = readdirSync('models').filter((name) => name.endsWith('.csv'));
  return names.map((name) => [name.replace('.csv', ''), readFileSync(`models/${name}`, 'utf8')]);
}

/** The inputs of a model: each name that has a number somewhere. */
export function inputNames(text: string): string[] {
  const [head = [], ...rows] = tableOf(text);
  const isInput = (row: readonly string[]): boolean => row.some((at, i) => holdsValues(head[i] ?? '') && isNumber(at));
  return rows.filter((row) => row[0] !== '' && isInput(row)).map(([name]) => name!);
}

/** A model with one input replaced in all plans. */
export function withInput(text: string, name: string, number: string): string {
  return textOf(changed(tableOf(text), oneInput(name, number)));
}

/** A model with all inputs replaced in all plans. */
export function withInputs(text: string, number: string): string {
  return textOf(changed(tableOf(text), everyInput(number)));
}

/** One number that is far off in a model that is else sound. */
const farOff: readonly (readonly [name: string, number: string])[] = [
  ['finishing_density', '1e300'],
  ['interval', '1e-300'],
  ['price', '1e300'],
  ['transplant_time', '1e200'],
  ['boards', '1e15'],
  ['nursery_time', '0'],
];

/** With its name as the model's title, by which a test knows that it is open. */
function titled({ name, text }: BadState): BadState {
  const [head = [], ...rows] = tableOf(text);
  const [first, label] = [rows.findIndex((row) => row[0] === ''), head.indexOf('label')];
  return { name, text: textOf([head, ...rows.map((row, i) => (i === first ? row.with(label, name) : row))]) };
}

/** Every bad state that the screens are looked at in. */
export function badStates(): BadState[] {
  const shipped = shippedTexts();
  const numbers = shipped.flatMap(([name, text]) =>
    (name === 'transplant-hire' ? badNumbers : badNumbers.slice(0, 1)).map((number) => ({
      name: `${name}, all ${number}`,
      text: withInputs(text, number),
    })),
  );
  const hire = shipped.find(([name]) => name === 'transplant-hire')![1];
  const table = tableOf(hire);
  const odds = Object.entries(odd).map(([name, change]) => ({ name, text: textOf(changed(table, change)) }));
  const all = [
    ...numbers,
    ...odds,
    { name: 'one plan', text: textOf(onePlan(table)) },
    { name: 'no entries', text: textOf(table.slice(0, 1)) },
    ...farOff.map(([name, number]) => ({ name: `${name} ${number}`, text: withInput(hire, name, number) })),
  ];
  return all.map(titled);
}
