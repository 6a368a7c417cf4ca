import { nearest } from '../core/nearest';
import { decimal, type Decimal } from '../core/number';
import { readTrials } from '../files/readTrials';
import { field } from '../model/sheet';
import type { Trials } from '../model/trials';
import { halfWidths } from '../study/studentT';
import { timeStudy, type StepTime, type Terms } from '../trade/timeStudy';
import type { Arguments } from './arguments';
import type { CommandHelp } from './commandHelp';
import { aligned, inLines, jsonNumber, jsonText, shortNumber, type Finished } from './outcome';
import { numberOf } from './session';
import { UsageError } from './usage';

export const timeHelp: CommandHelp = {
  name: 'time',
  takes: 'TRIALS.csv',
  summary: 'seconds per plant of each step; FILE holds timed trials',
  gives:
    'The seconds per plant of each timed step with their confidence interval, the standard time, and how many batches the wanted closeness takes.',
  options: [
    { name: 'step', value: 'NAME', does: 'one step alone; left out: all' },
    { name: 'allowance', value: '15', does: 'rest and delays, per cent' },
    { name: 'allowance-of', value: 'job|day', does: 'what the allowance is a share of; left out: job' },
    { name: 'within', value: '5', does: 'how close the mean is wanted, per cent either way' },
    { name: 'confidence', value: '95', does: 'how sure the interval is, per cent' },
  ],
  example: 'time models/trials/transplant-trials.csv --allowance 15 --allowance-of job',
};

type Options = Arguments['options'];

const hundred = decimal(100);
const usual = { allowance: decimal(15), within: decimal(5), confidence: decimal(95) };

/** What timed trials say of each step: seconds per plant, how sure that is, the standard time, batches needed. */
export function timeCommand({ options, json }: Arguments, bytes: Uint8Array): Finished {
  const confidence = confidenceOf(options);
  const terms = termsOf(options, confidence);
  const trials = readTrials(bytes);
  const step = trials.refused ? undefined : stepOf(trials, options['step']);
  const batches = trials.batches.filter((batch) => step === undefined || batch.step === step);
  const study = timeStudy(batches, terms);
  return {
    output: json ? jsonText(study.map(stepDocument)) : people(study, terms, confidence),
    messages: inLines([...trials.faults, ...trials.notices]),
    status: trials.faults.length === 0 ? 0 : 1,
  };
}

function confidenceOf(options: Options): Decimal {
  const confidence = numberOf(options['confidence'], 'confidence') ?? usual.confidence;
  if (confidence.gt(0) && confidence.lt(hundred)) return confidence;
  throw new UsageError(`--confidence not between 0 and 100: ${confidence.toString()}. Give per cent, such as 95.`);
}

function termsOf(options: Options, confidence: Decimal): Terms {
  const allowance = numberOf(options['allowance'], 'allowance') ?? usual.allowance;
  const allowanceOf = options['allowance-of'] ?? 'job';
  const within = numberOf(options['within'], 'within') ?? usual.within;
  if (allowanceOf !== 'job' && allowanceOf !== 'day') {
    throw new UsageError(`--allowance-of not known: ${allowanceOf}. Use job or day.`);
  }
  if (allowance.lt(0)) throw new UsageError(`--allowance below 0: ${allowance.toString()}. Give per cent, such as 15.`);
  if (allowanceOf === 'day' && allowance.gte(hundred)) {
    throw new UsageError(`--allowance is the whole day: ${allowance.toString()}. Stay below 100.`);
  }
  if (within.lte(0)) throw new UsageError(`--within not above 0: ${within.toString()}. Give per cent, such as 5.`);
  const outside = hundred.minus(confidence).dividedBy(hundred).toNumber();
  return { allowance, allowanceOf, within, halfWidths: halfWidths(outside) };
}

/** The step that is asked for, which may have no sound batch. */
function stepOf({ sheet }: Trials, name: string | undefined): string | undefined {
  const steps = new Set(sheet.rows.map((row) => field(row, 'step')).filter((step) => step !== ''));
  if (name === undefined || steps.has(name)) return name;
  const near = nearest(name, steps);
  const fix = near === undefined ? `The file has ${[...steps].join(', ') || 'none'}.` : `Did you mean ${near}?`;
  throw new UsageError(`step not known: ${name}. ${fix}`);
}

/** A count for a document; null beyond what a JSON number holds. */
function count(value: Decimal | undefined): number | null {
  const number = value?.toNumber() ?? NaN;
  return Number.isFinite(number) ? number : null;
}

function stepDocument({ step, batches, plants, secondsPerPlant, spread, standardTime }: StepTime) {
  return {
    step,
    batches,
    plants: count(plants),
    seconds_per_plant: jsonNumber(secondsPerPlant),
    sd: jsonNumber(spread?.sd),
    ci: spread ? spread.interval.map(jsonNumber) : null,
    standard_time: jsonNumber(standardTime),
    trials_needed: count(spread?.batchesNeeded),
  };
}

function people(study: readonly StepTime[], terms: Terms, confidence: Decimal): string {
  if (study.length === 0) return '';
  const head = ['step', 'batches', 'plants', 'seconds per plant', 'from', 'to', 'standard time', 'batches needed'];
  const rows = study.map(({ step, batches, plants, secondsPerPlant, spread, standardTime }) => [
    step,
    String(batches),
    plants.toString(),
    ...[secondsPerPlant, ...(spread?.interval ?? [undefined, undefined]), standardTime].map(shortNumber),
    shortNumber(spread?.batchesNeeded),
  ]);
  const { allowance, allowanceOf, within } = terms;
  const meanings = [
    `from, to: ${confidence.toString()} % confidence interval of the seconds per plant`,
    `standard time: with an allowance of ${allowance.toString()} % of the ${allowanceOf}`,
    `batches needed: in all, for ${within.toString()} % either way at ${confidence.toString()} % confidence`,
  ];
  return `${aligned([head, ...rows], [1, 2, 3, 4, 5, 6, 7])}\n${meanings.join('\n')}\n`;
}
