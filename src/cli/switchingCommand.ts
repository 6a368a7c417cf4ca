import { wording } from '../language/wording';
import { decimal } from '../core/number';
import { switchingValues, type SwitchingValue } from '../study/switching';
import type { Arguments } from './arguments';
import { modelOptions, resultOption, targetOption, type CommandHelp } from './commandHelp';
import { aligned, inputNumber, jsonNumber, shortNumber, type Outcome } from './outcome';
import { numberOf, cliQuestion, resultUnit, type Session } from './session';

export const switchingHelp: CommandHelp = {
  name: 'switching',
  takes: 'MODEL.csv',
  summary: wording`how far each input must move to flip the result`,
  gives: wording`For every input the value nearest to today at which the result crosses the target, with the change per cent, the smallest change first.`,
  options: [resultOption, targetOption, ...modelOptions],
  example: 'switching models/density-lesson.csv --result left_week --target 300',
};

function inputDocument({ lever, value, all, changePercent }: SwitchingValue): Record<string, unknown> {
  return {
    name: lever.cell.name,
    base: jsonNumber(lever.base),
    switch: jsonNumber(value),
    all: all.map(jsonNumber),
    change_percent: jsonNumber(changePercent),
  };
}

function inputLine({ lever, value, changePercent }: SwitchingValue): string[] {
  const change = changePercent === undefined ? '' : `${shortNumber(changePercent)} %`;
  const flips = value === undefined ? wording`cannot flip it` : inputNumber(lever.cell, value);
  return [lever.cell.name, inputNumber(lever.cell, lever.base), flips, change, lever.cell.unitText];
}

/** The value of every input at which the result crosses the target. */
export function switchingCommand(session: Session, { options }: Arguments): Outcome {
  const asked = cliQuestion(session, options['result']);
  const target = numberOf(options['target'], 'target') ?? decimal(0);
  const inputs = switchingValues(asked, target);
  const unit = resultUnit(asked);
  const head = [wording`input`, wording`today`, wording`switches at`, wording`change`, wording`unit`];
  return {
    document: { result: options['result'], unit, base: jsonNumber(asked.base), inputs: inputs.map(inputDocument) },
    table: aligned([head, ...inputs.map(inputLine)], [1, 2, 3]),
    computed: !asked.base.isNaN(),
  };
}
