import { wording, wordingOf } from '../language/wording';
import { tornado, type Bar } from '../study/tornado';
import type { Decimal } from '../core/number';
import type { Arguments } from './arguments';
import { modelOptions, resultOption, type CommandHelp } from './commandHelp';
import { aligned, inputNumber, jsonNumber, shortNumber, type Outcome } from './outcome';
import { cliQuestion, resultUnit, type Session } from './session';

export const tornadoHelp: CommandHelp = {
  name: 'tornado',
  takes: 'MODEL.csv',
  summary: wording`the result at both ends of each uncertain input`,
  gives: wording`The result at the low and the high end of every input that has a range, one at a time, the largest swing first.`,
  options: [resultOption, ...modelOptions],
  example: 'tornado models/transplant-hire.csv --result margin --against "Straight to finishing"',
};

function barDocument({ lever, low, high, atLow, atHigh, swing }: Bar<Decimal>): Record<string, unknown> {
  return {
    name: lever.cell.name,
    low: jsonNumber(low),
    high: jsonNumber(high),
    at_low: jsonNumber(atLow),
    at_high: jsonNumber(atHigh),
    swing: jsonNumber(swing),
  };
}

function barLine({ lever, low, high, atLow, atHigh, swing }: Bar<Decimal>): string[] {
  const ends = [low, high].map((end) => inputNumber(lever.cell, end));
  return [lever.cell.name, ...ends, ...[atLow, atHigh, swing].map(shortNumber), lever.cell.unitText];
}

/** The result at both ends of every uncertain input. */
export function tornadoCommand(session: Session, { options }: Arguments): Outcome {
  const asked = cliQuestion(session, options['result']);
  const bars = tornado(asked);
  const unit = resultUnit(asked);
  const head = [
    wording`input`,
    wordingOf('end of a range')`low`,
    wordingOf('end of a range')`high`,
    wording`at low`,
    wording`at high`,
    wording`swing`,
    wording`unit of input`,
  ];
  return {
    document: { result: options['result'], base: jsonNumber(asked.base), unit, bars: bars.map(barDocument) },
    table: `${options['result'] ?? ''}: ${shortNumber(asked.base)} ${unit}\n\n${aligned([head, ...bars.map(barLine)], [1, 2, 3, 4, 5])}`,
    computed: !asked.base.isNaN(),
  };
}
