import { buildModel } from '../model/buildModel';
import type { Model } from '../model/model';
import type { Reply, Report, Sent } from '../present/howSure/reply';
import { runRisk } from './runRisk';

/** Longest that the server works before it looks for a newer question, in milliseconds. */
const slice = 25;

/** Answers questions slice by slice, of which the newest counts; it keeps the model from one to the next. */
export class RiskServer {
  private model: Model | undefined;
  private id = 0;
  private steps: Generator<Report, void> | undefined;

  /**
   * @param post sends a reply
   * @param now milliseconds
   */
  constructor(
    private readonly post: (reply: Reply) => void,
    private readonly now: () => number,
  ) {}

  /** Whether there is work. */
  get busy(): boolean {
    return this.steps !== undefined;
  }

  /** Takes in a question in place of the one before. */
  ask({ id, sheet, ...asked }: Sent): void {
    this.id = id;
    if (sheet !== undefined) this.model = buildModel(sheet);
    this.steps = this.model && runRisk(this.model, asked);
  }

  stop(): void {
    this.steps = undefined;
  }

  /** Works for a slice of time. What the engine cannot do is told, not thrown: memory may be short for many draws. */
  work(): void {
    try {
      this.slice();
    } catch (error) {
      this.steps = undefined;
      this.post({ id: this.id, refused: error instanceof Error ? error.message : String(error) });
    }
  }

  private slice(): void {
    const end = this.now() + slice;
    let latest: Report | undefined;
    do {
      const next = this.steps?.next();
      if (next === undefined || next.done === true) {
        this.steps = undefined;
        this.report(latest);
        this.post({ id: this.id, finished: true });
        return;
      }
      latest = { ...next.value, found: next.value.found ?? latest?.found };
    } while (latest.found === undefined && this.now() < end);
    this.report(latest);
  }

  private report(report: Report | undefined): void {
    if (report !== undefined) this.post({ id: this.id, report });
  }
}
