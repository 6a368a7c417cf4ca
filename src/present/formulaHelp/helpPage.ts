import { wording } from '../../language/wording';
import type { Format } from '../text/numberFormat';
import { formulaHelp } from './formulaHelp';
import type { WorkedExample } from './runExample';
import type { UnitHelp } from './unitHelp';

/** One thing that the help explains: how it is written, and what is said of it line by line. */
interface HelpItem {
  readonly term: string;
  readonly lines: readonly string[];
}

/** A part of the help as a page shows it. */
export interface HelpSection {
  readonly heading: string;
  readonly intro: string;
  readonly items: readonly HelpItem[];
}

function truth(holds: boolean): string {
  return holds ? wording`true` : wording`false`;
}

/** `min(a, b) gives 2 head, with a = 2 head and b = 3 head`. */
function exampleLine({ formula, given, value, unit }: WorkedExample, format: Format): string {
  const result = typeof value === 'boolean' ? truth(value) : [format.value(value, undefined), unit].join(' ').trim();
  const inputs = given.map(({ name, number, unit: of }) => [name, '=', format.written(number), of].join(' ').trim());
  return inputs.length > 0
    ? wording`${formula} gives ${result}, with ${inputs.join(', ')}`
    : wording`${formula} gives ${result}`;
}

function unitText({ name, factor, base }: UnitHelp): string {
  return name === base ? name : [name, '=', factor, base].join(' ').trim();
}

/** The whole help on formulas as sections of a page, every example worked out; numbers as the format writes them. */
export function helpPage(format: Format): HelpSection[] {
  const { functions, operators, units, refused } = formulaHelp();
  return [
    {
      ...functions,
      items: functions.entries.map(({ signature, summary, units: rule, examples }) => ({
        term: signature,
        lines: [`${summary} ${rule}`, ...examples.map((example) => exampleLine(example, format))],
      })),
    },
    {
      ...operators,
      items: operators.entries.map(({ sign, meaning, precedence, takes, example }) => ({
        term: sign,
        lines: [wording`${meaning} ${takes} Order ${precedence}.`, exampleLine(example, format)],
      })),
    },
    {
      ...units,
      items: units.entries.map(({ kind, note, units: all }) => ({
        term: kind,
        lines: [all.map(unitText).join(', '), note].filter(Boolean),
      })),
    },
    {
      ...refused,
      items: refused.entries.map(({ what, refused: wrong, instead, example }) => ({
        term: what,
        lines: [wording`Refused: ${wrong}`, instead, exampleLine(example, format)],
      })),
    },
  ];
}
