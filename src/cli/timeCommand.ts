import { wording } from '../language/wording';
import { nearest } from '../core/nearest';
import { decimal, type Decimal } from '../core/number';
import { readTrials } from '../files/readTrials';
import { field } from '../model/sheet';
import type { Trials } from '../model/trials';
import { halfWidths } from '../study/studentT';
import type { Terms } from '../trade/timeStudy';
import type { Arguments } from './arguments';
import type { CommandHelp } from './commandHelp';
import { inLines, jsonText, type Finished } from './outcome';
import { numberOf } from './session';
import { learningShown } from './timedLearning';
import { lossesShown } from './timedLosses';
import { oddShown } from './timedOdd';
import { timesShown } from './timedTimes';
import type { TimedView } from './timedView';
import { waysShown } from './timedWays';
import { UsageError } from './usage';

export const timeHelp: CommandHelp = {
  name: 'time',
  takes: 'TRIALS.csv',
  summary: wording`seconds per plant of each step; FILE holds timed trials`,
  gives: wording`The seconds per plant of each timed step with their confidence interval, the standard time, and how many batches the wanted closeness takes. With --show instead: ways of working compared in pairs, the curve of learning of all and of each worker, the share lost, or the batches that lie far from the others.`,
  options: [
    { name: 'step', value: 'NAME', does: wording`one step alone; left out: all` },
    { name: 'allowance', value: '15', does: wording`rest and delays, per cent` },
    { name: 'allowance-of', value: 'job|day', does: wording`what the allowance is a share of; left out: job` },
    { name: 'within', value: '5', does: wording`how close the mean is wanted, per cent either way` },
    { name: 'confidence', value: '95', does: wording`how sure the interval is, per cent` },
    {
      name: 'show',
      value: 'times|ways|learning|losses|odd',
      does: wording`what is shown of the batches; left out: times`,
    },
    { name: 'after', value: '500', does: wording`with --show learning: the seconds after so many plants` },
  ],
  example: 'time models/trials/transplant-trials.csv --allowance 15 --allowance-of job',
};

type Options = Arguments['options'];

const hundred = decimal(100);
const usual = { allowance: decimal(15), within: decimal(5), confidence: decimal(95) };

/** What timed trials say of each step. */
export function timeCommand({ options, json }: Arguments, bytes: Uint8Array): Finished {
  const confidence = confidenceOf(options);
  const terms = termsOf(options, confidence);
  const view = viewOf(options);
  const trials = readTrials(bytes);
  const step = trials.refused ? undefined : stepOf(trials, options['step']);
  const batches = trials.batches.filter((batch) => step === undefined || batch.step === step);
  const { document, table } = view({ batches, terms, confidence, options });
  return {
    output: json ? jsonText(document) : table,
    messages: inLines([...trials.faults, ...trials.notices]),
    status: trials.faults.length === 0 ? 0 : 1,
  };
}

/** What can be shown of batches. */
const views: Readonly<Record<string, TimedView>> = {
  times: timesShown,
  ways: waysShown,
  learning: learningShown,
  losses: lossesShown,
  odd: oddShown,
};

function viewOf(options: Options): TimedView {
  const name = options['show'] ?? 'times';
  const view = Object.hasOwn(views, name) ? views[name] : undefined;
  if (view === undefined)
    throw new UsageError(wording`--show not known: ${name}. Use ${Object.keys(views).join(', ')}.`);
  if (options['after'] !== undefined && name !== 'learning') {
    throw new UsageError(wording`--after without --show learning. Add that, or leave it out.`);
  }
  return view;
}

function confidenceOf(options: Options): Decimal {
  const confidence = numberOf(options['confidence'], 'confidence') ?? usual.confidence;
  if (confidence.gt(0) && confidence.lt(hundred)) return confidence;
  throw new UsageError(
    wording`--confidence not between 0 and 100: ${confidence.toString()}. Give per cent, such as 95.`,
  );
}

function termsOf(options: Options, confidence: Decimal): Terms {
  const allowance = numberOf(options['allowance'], 'allowance') ?? usual.allowance;
  const allowanceOf = options['allowance-of'] ?? 'job';
  const within = numberOf(options['within'], 'within') ?? usual.within;
  if (allowanceOf !== 'job' && allowanceOf !== 'day') {
    throw new UsageError(wording`--allowance-of not known: ${allowanceOf}. Use job or day.`);
  }
  if (allowance.lt(0))
    throw new UsageError(wording`--allowance below 0: ${allowance.toString()}. Give per cent, such as 15.`);
  if (allowanceOf === 'day' && allowance.gte(hundred)) {
    throw new UsageError(wording`--allowance is the whole day: ${allowance.toString()}. Stay below 100.`);
  }
  if (within.lte(0))
    throw new UsageError(wording`--within not above 0: ${within.toString()}. Give per cent, such as 5.`);
  const outside = hundred.minus(confidence).dividedBy(hundred).toNumber();
  return { allowance, allowanceOf, within, halfWidths: halfWidths(outside) };
}

/** The step that is asked for, which may have no sound batch. */
function stepOf({ sheet }: Trials, name: string | undefined): string | undefined {
  const steps = new Set(sheet.rows.map((row) => field(row, 'step')).filter((step) => step !== ''));
  if (name === undefined || steps.has(name)) return name;
  const near = nearest(name, steps);
  const there = steps.size === 0 ? wording`The file has none.` : wording`The file has ${[...steps].join(', ')}.`;
  const fix = near === undefined ? there : wording`Did you mean ${near}?`;
  throw new UsageError(wording`step not known: ${name}. ${fix}`);
}
