import { wording } from '../language/wording';
import { decimal } from '../core/number';
import { breakeven, type BreakevenPoints } from '../study/breakeven';
import { curveAlong } from '../study/curve';
import { defaultRange, type SearchRange } from '../study/searchRange';
import type { Lever } from '../model/view';
import type { Arguments } from './arguments';
import { modelOptions, resultOption, targetOption, type CommandHelp } from './commandHelp';
import { aligned, inputNumber, jsonNumber, shortNumber, type Outcome } from './outcome';
import { inputOf, numberOf, cliQuestion, type Session } from './session';
import { UsageError } from './usage';

export const breakevenHelp: CommandHelp = {
  name: 'breakeven',
  takes: 'MODEL.csv',
  summary: wording`where the result comes to the target`,
  gives: wording`Every value of one input at which the result crosses or touches the target, and where it breaks off, in a range of the input.`,
  options: [
    resultOption,
    { name: 'input', value: 'NAME', does: wording`the input to move`, needed: true },
    targetOption,
    { name: 'from', value: 'A', does: wording`where the range begins; left out: well beyond its own range` },
    { name: 'to', value: 'B', does: wording`where it ends; give both or neither` },
    ...modelOptions,
  ],
  example:
    'breakeven models/transplant-hire.csv --result margin --input transplant_time --against "Straight to finishing"',
};

function rangeOf({ options }: Arguments, lever: Lever): SearchRange {
  const from = numberOf(options['from'], 'from');
  const to = numberOf(options['to'], 'to');
  if ((from === undefined) !== (to === undefined))
    throw new UsageError(wording`half a range: give both --from and --to.`);
  if (from === undefined || to === undefined) return defaultRange(lever);
  if (from.lt(to)) return { from, to };
  throw new UsageError(wording`--from not below --to: ${from.toString()} and ${to.toString()}. Swap them.`);
}

const crossingTexts = { up: wording`crosses up`, down: wording`crosses down`, touch: wording`touches` } as const;

function sentence({ holds, crossings, breaks }: BreakevenPoints): string {
  if (holds === 'everywhere') return `${wording`at or above the target everywhere in the range`}\n`;
  if (holds === 'nowhere') return `${wording`below the target everywhere in the range`}\n`;
  const lines = [
    ...crossings.map(({ value, direction }) => [crossingTexts[direction], shortNumber(value)]),
    ...breaks.map((value) => [wording`breaks`, shortNumber(value)]),
  ];
  return aligned(lines, [1]);
}

/** Where the result comes to the target as one input moves. */
export function breakevenCommand(session: Session, given: Arguments): Outcome {
  const asked = cliQuestion(session, given.options['result']);
  const lever = inputOf(asked, 'input', given.options['input']);
  const target = numberOf(given.options['target'], 'target') ?? decimal(0);
  const curve = curveAlong(asked.response([lever]));
  const range = rangeOf(given, lever);
  const found = breakeven(curve, range, target, [lever.base]);
  const { name, unitText } = lever.cell;
  const withUnit = (text: string): string => [text, unitText].filter(Boolean).join(' ');
  const today = withUnit(inputNumber(lever.cell, lever.base));
  const [rangeFrom, rangeTo] = [shortNumber(range.from), withUnit(shortNumber(range.to))];
  return {
    document: {
      input: name,
      unit: unitText,
      base: jsonNumber(lever.base),
      from: jsonNumber(range.from),
      to: jsonNumber(range.to),
      crossings: found.crossings.map(({ value, direction }) => ({ value: jsonNumber(value), direction })),
      breaks: found.breaks.map(jsonNumber),
      holds: found.holds,
    },
    table: `${wording`${name}: ${today} today, looked at from ${rangeFrom} to ${rangeTo}`}\n\n${sentence(found)}`,
    computed: !asked.base.isNaN(),
  };
}
