import { decimal, sum, type Decimal } from '../../core/number';
import { field, type SheetRow } from '../../model/sheet';
import type { Batch, Trials } from '../../model/trials';
import { ratedSeconds, timeStudy, type StepTime } from '../../trade/timeStudy';
import type { TimingTerms } from './terms';

/** A step with its batches and figures. */
export interface StepFound {
  /** Blank for the rows that name no step. */
  readonly step: string;
  /** All its rows, in file order. */
  readonly rows: readonly SheetRow[];
  /** Those that are sound. */
  readonly batches: readonly Batch[];
  /** Undefined where no row is sound. */
  readonly time: StepTime | undefined;
  /** Share of plants lost in the batches whose losses were counted; undefined where none were. */
  readonly lostShare: Decimal | undefined;
}

const nothing = decimal(0);

function lostShareOf(batches: readonly Batch[]): Decimal | undefined {
  const counted = batches.filter(({ lost }) => lost !== undefined);
  if (counted.length === 0) return undefined;
  return sum(counted.map(({ lost }) => lost ?? nothing)).dividedBy(sum(counted.map(({ plants }) => plants)));
}

/** The steps in the order in which they first occur, each with its rows and figures. */
export function studyOf({ sheet, batches }: Trials, { terms }: TimingTerms): StepFound[] {
  const rows = new Map<string, SheetRow[]>();
  for (const row of sheet.rows) {
    const step = field(row, 'step');
    const ofStep = rows.get(step);
    if (ofStep === undefined) rows.set(step, [row]);
    else ofStep.push(row);
  }
  const times = new Map(timeStudy(batches, terms).map((time) => [time.step, time]));
  return [...rows].map(([step, ofStep]) => {
    const sound = batches.filter((batch) => batch.step === step);
    return { step, rows: ofStep, batches: sound, time: times.get(step), lostShare: lostShareOf(sound) };
  });
}

/** Seconds per plant of a single batch, at a normal pace. */
export function ownSeconds(batch: Batch): Decimal {
  return ratedSeconds(batch).dividedBy(batch.plants);
}
