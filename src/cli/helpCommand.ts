import { wording } from '../language/wording';
import { formulaHelp, type FormulaHelp } from '../present/formulaHelp/formulaHelp';
import type { WorkedExample } from '../present/formulaHelp/runExample';
import type { Arguments } from './arguments';
import type { CommandHelp } from './commandHelp';
import { formulasText } from './formulasText';
import { jsonNumber, jsonText, type Finished } from './outcome';

/** What `help` can tell of besides the commands. */
export const formulasTopic = 'formulas';

export const helpHelp: CommandHelp = {
  name: 'help',
  takes: formulasTopic,
  summary: wording`functions, signs and units of formulas: help formulas`,
  gives: wording`With the word formulas: every function with its units and examples, the signs and their order, the units, and what is refused in a formula with what to write instead. With the name of a command: what it takes and gives.`,
  options: [],
  example: 'help formulas',
};

function exampleDocument({ value, ...example }: WorkedExample): Record<string, unknown> {
  return { ...example, value: typeof value === 'boolean' ? value : jsonNumber(value) };
}

function helpDocument({ functions, operators, units, refused }: FormulaHelp): Record<string, unknown> {
  return {
    functions: functions.entries.map((fn) => ({ ...fn, examples: fn.examples.map(exampleDocument) })),
    operators: operators.entries.map((sign) => ({ ...sign, example: exampleDocument(sign.example) })),
    units: units.entries.flatMap(({ kind, units: ofKind }) => ofKind.map((unit) => ({ ...unit, kind }))),
    kinds: units.entries.map(({ kind, note }) => ({ kind, note })),
    refused: refused.entries.map((entry) => ({ ...entry, example: exampleDocument(entry.example) })),
    faults: [],
  };
}

/** All there is to know for writing a formula. */
export function formulasCommand({ json }: Pick<Arguments, 'json'>): Finished {
  const help = formulaHelp();
  return { output: json ? jsonText(helpDocument(help)) : formulasText(help), messages: '', status: 0 };
}
