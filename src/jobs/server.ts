import { buildModel } from '../model/buildModel';
import { withRow, type Sheet } from '../model/sheet';
import { evaluatePlan } from '../model/values';
import type { Job, Prepared, Report } from './job';
import type { JobName } from './jobs';
import type { FromWorker, SheetText, ToWorker } from './protocol';

/** Jobs by name: all of them in a worker, a few where a page has no worker. */
type Work = Readonly<Partial<Record<JobName, unknown>>>;

/** A model's text, and the model once a job has asked for it. */
class HeldSheet {
  private made: Prepared | undefined;

  constructor(readonly sheet: Sheet) {}

  get prepared(): Prepared {
    if (this.made === undefined) {
      const model = buildModel(this.sheet);
      this.made = { model, values: model.plans.map((plan) => evaluatePlan(plan)) };
    }
    return this.made;
  }
}

interface Running {
  readonly id: number;
  readonly steps: () => Generator<Report<unknown>, unknown>;
}

/** Runs jobs in slices of time, taking turns, and keeps the models they were asked about. */
export class JobServer {
  private readonly sheets = new Map<number, HeldSheet>();
  private readonly queue: Running[] = [];

  /**
   * @param jobs that can be asked for
   * @param post sends a message to the page
   * @param now milliseconds
   * @param slice milliseconds for which one job runs before other jobs and new messages get their turn
   */
  constructor(
    private readonly jobs: Work,
    private readonly post: (message: FromWorker) => void,
    private readonly now: () => number,
    private readonly slice: number,
  ) {}

  /** Whether there is work. */
  get busy(): boolean {
    return this.queue.length > 0;
  }

  hear(message: ToWorker): void {
    if (message.kind === 'sheet') this.sheets.set(message.sheet, new HeldSheet(this.sheetOf(message.text)));
    else if (message.kind === 'forget') this.sheets.delete(message.sheet);
    else if (message.kind === 'cancel') this.cancel(message.id);
    else this.begin(message);
  }

  /** Runs one job for a slice of time. An error of the engine, such as lack of memory, is reported and not thrown. */
  work(): void {
    const running = this.queue.shift();
    if (running === undefined) return;
    try {
      if (!this.run(running)) this.queue.push(running);
    } catch (error) {
      this.post({ id: running.id, kind: 'refused', reason: error instanceof Error ? error.message : String(error) });
    }
  }

  private sheetOf(text: SheetText): Sheet {
    return 'whole' in text ? text.whole : text.rows.reduce(withRow, this.held(text.like).sheet);
  }

  private held(sheet: number): HeldSheet {
    const held = this.sheets.get(sheet);
    if (held === undefined) throw new Error(`The worker was never sent sheet ${sheet}.`);
    return held;
  }

  private begin({ id, job, sheet, request }: Extract<ToWorker, { kind: 'ask' }>): void {
    const held = this.held(sheet);
    const work = this.jobs[job] as Job<unknown, unknown>;
    let steps: ReturnType<typeof work> | undefined;
    this.queue.push({ id, steps: () => (steps ??= work(held.prepared, request)) });
  }

  private cancel(id: number): void {
    const at = this.queue.findIndex((running) => running.id === id);
    if (at !== -1) this.queue.splice(at, 1);
    this.post({ id, kind: 'cancelled' });
  }

  /** Whether the job has ended. */
  private run({ id, steps }: Running): boolean {
    const end = this.now() + this.slice;
    let latest: Report<unknown> | undefined;
    do {
      const next = steps().next();
      if (next.done === true) {
        this.post({ id, kind: 'finished', found: next.value });
        return true;
      }
      latest = next.value;
    } while (latest.found === undefined && this.now() < end);
    this.post({ id, kind: 'report', report: latest });
    return false;
  }
}
