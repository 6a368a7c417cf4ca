import { wording } from '../language/wording';
import { grid } from '../study/grid';
import type { Arguments } from './arguments';
import { modelOptions, resultOption, type CommandHelp } from './commandHelp';
import { aligned, jsonNumber, shortNumber, type Outcome } from './outcome';
import { inputOf, cliQuestion, type Session } from './session';
import { UsageError } from './usage';

export const gridHelp: CommandHelp = {
  name: 'grid',
  takes: 'MODEL.csv',
  summary: wording`the result over two inputs`,
  gives: wording`A table of the result at evenly spaced values of two inputs, each from the low to the high end of its range.`,
  options: [
    resultOption,
    { name: 'across', value: 'NAME', does: wording`the input of the columns`, needed: true },
    { name: 'down', value: 'NAME', does: wording`the input of the rows`, needed: true },
    { name: 'steps', value: '11', does: wording`how many values of each` },
    ...modelOptions,
  ],
  example: 'grid models/transplant-hire.csv --result margin --across wage --down transplant_time --steps 5',
};

const mostSteps = 501;

function stepsOf(text: string | undefined): number {
  const steps = text === undefined ? 11 : Number(text);
  if (Number.isInteger(steps) && steps >= 2 && steps <= mostSteps) return steps;
  throw new UsageError(wording`--steps not a whole number from 2 to ${mostSteps}: ${text ?? ''}.`);
}

/** A result over two inputs. */
export function gridCommand(session: Session, { options }: Arguments): Outcome {
  const asked = cliQuestion(session, options['result']);
  const across = inputOf(asked, 'across', options['across']);
  const down = inputOf(asked, 'down', options['down']);
  if (across.cell === down.cell) throw new UsageError(wording`one input twice: ${across.cell.name}. Name two inputs.`);
  const found = grid(asked, across, down, stepsOf(options['steps']));
  const corner = `${down.cell.name} \\ ${across.cell.name}`;
  const rows = found.down.map((y, j) => [shortNumber(y), ...(found.values[j] ?? []).map(shortNumber)]);
  return {
    document: {
      across: found.across.map(jsonNumber),
      down: found.down.map(jsonNumber),
      values: found.values.map((row) => row.map(jsonNumber)),
    },
    table: aligned(
      [[corner, ...found.across.map(shortNumber)], ...rows],
      [...Array(found.across.length + 1).keys()].slice(1),
    ),
    computed: !asked.base.isNaN(),
  };
}
