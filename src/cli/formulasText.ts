import { wording } from '../language/wording';
import type { FormulaHelp } from '../present/formulaHelp/formulaHelp';
import type { FunctionHelp } from '../present/formulaHelp/functionHelp';
import type { OperatorHelp } from '../present/formulaHelp/operatorHelp';
import type { RefusedHelp } from '../present/formulaHelp/refusedHelp';
import type { WorkedExample } from '../present/formulaHelp/runExample';
import type { UnitHelp, UnitKind } from '../present/formulaHelp/unitHelp';
import { described, paragraph, joinedWords } from './layout';
import { shortNumber } from './outcome';

const indent = 4;

/** `min(a, b) → 2 head, with a = 2 head, b = 3 head`. */
function exampleText({ formula, given, value, unit }: WorkedExample): string {
  const result = typeof value === 'boolean' ? String(value) : joinedWords(shortNumber(value), unit);
  const inputs = given.map(({ name, number, unit: of }) => joinedWords(name, '=', number, of)).join(', ');
  return inputs === '' ? `${formula} → ${result}` : wording`${formula} → ${result}, with ${inputs}`;
}

function functionText({ signature, summary, units, examples }: FunctionHelp): string {
  const lines = [`${summary} ${units}`, ...examples.map(exampleText)];
  return `  ${signature}\n${lines.map((line) => paragraph(line, indent)).join('')}`;
}

/** Where the text on a sign begins, and that on a kind of unit. */
const [signColumn, kindColumn] = [18, 26];

function operatorText({ sign, meaning, precedence, takes, example }: OperatorHelp): string {
  const column = signColumn;
  return described(`${precedence}  ${sign}`, `${meaning} ${takes}`, column) + paragraph(exampleText(example), column);
}

function unitText({ name, factor, base }: UnitHelp): string {
  return name === base ? name : joinedWords(name, '=', factor, base);
}

/** Units that are all their own base, as currencies are, need no commas. */
function unitsText(units: readonly UnitHelp[]): string {
  return units.map(unitText).join(units.every(({ name, base }) => name === base) ? ' ' : ', ');
}

function kindText({ kind, note, units }: UnitKind): string {
  const [first = '', ...others] = [unitsText(units), note].filter(Boolean);
  return described(kind, first, kindColumn) + others.map((text) => paragraph(text, kindColumn)).join('');
}

function refusedText({ what, refused, instead, example }: RefusedHelp): string {
  const lines = [wording`refused: ${refused}`, instead, exampleText(example)];
  return `  ${what}\n${lines.map((line) => paragraph(line, indent)).join('')}`;
}

function part(heading: string, intro: string, texts: readonly string[]): string {
  return `${heading.toUpperCase()}\n${paragraph(intro)}\n${texts.join('\n')}`;
}

/** The help on formulas for people, at most 100 columns wide. */
export function formulasText({ functions, operators, units, refused }: FormulaHelp): string {
  return [
    part(functions.heading, functions.intro, functions.entries.map(functionText)),
    part(operators.heading, operators.intro, operators.entries.map(operatorText)),
    part(units.heading, units.intro, units.entries.map(kindText)),
    part(refused.heading, refused.intro, refused.entries.map(refusedText)),
  ].join('\n\n');
}
