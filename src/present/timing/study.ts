import { field, type SheetRow } from '../../model/sheet';
import type { Batch, Trials } from '../../model/trials';
import { lostShare, type LostShare } from '../../trade/lostShare';
import { oddBatches, type OddBatch } from '../../trade/oddBatches';
import { isCounted, timeStudy, type StepTime } from '../../trade/timeStudy';
import type { TimingTerms } from './terms';

/** A step with its batches and figures. */
export interface StepFound {
  /** Blank for the rows that name no step. */
  readonly step: string;
  /** All its rows, in file order. */
  readonly rows: readonly SheetRow[];
  /** Those that count: sound, and left out by nobody. */
  readonly batches: readonly Batch[];
  /** Those that are sound, and that a person left out. */
  readonly aside: readonly Batch[];
  /** Undefined where no row is sound. */
  readonly time: StepTime | undefined;
  /** Plants lost in the batches whose losses were counted; undefined where none were. */
  readonly losses: LostShare | undefined;
  /** Batches that lie far from the others of their step and way. */
  readonly odd: readonly OddBatch[];
}

function grouped(batches: readonly Batch[], key: (batch: Batch) => string): Map<string, Batch[]> {
  const groups = new Map<string, Batch[]>();
  for (const batch of batches) {
    const group = groups.get(key(batch));
    if (group === undefined) groups.set(key(batch), [batch]);
    else group.push(batch);
  }
  return groups;
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
  const soundOf = grouped(batches, ({ step }) => step);
  const times = new Map(timeStudy(batches, terms).map((time) => [time.step, time]));
  return [...rows].map(([step, ofStep]) => {
    const sound = soundOf.get(step) ?? [];
    const counted = sound.filter(isCounted);
    return {
      step,
      rows: ofStep,
      batches: counted,
      aside: sound.filter((batch) => !isCounted(batch)),
      time: times.get(step),
      losses: lostShare(counted, terms.halfWidths.z),
      odd: [...grouped(counted, ({ way }) => way).values()].flatMap(oddBatches),
    };
  });
}
