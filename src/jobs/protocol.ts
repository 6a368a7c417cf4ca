import type { LanguageTexts } from '../language/catalogue';
import type { Sheet, SheetRow } from '../model/sheet';
import type { Report } from './job';
import type { JobName } from './jobs';

/** A model's text: whole, or the rows in which it differs from one that was sent before. */
export type SheetText = { readonly whole: Sheet } | { readonly like: number; readonly rows: readonly SheetRow[] };

/** The first message to a worker: the language of what it says. */
export interface WorkerLanguage {
  readonly kind: 'language';
  /** Undefined for English. */
  readonly texts: LanguageTexts | undefined;
}

/** Messages from the page to the worker. Each job and each sheet has a number that is used only once. */
export type ToWorker =
  | { readonly kind: 'sheet'; readonly sheet: number; readonly text: SheetText }
  | { readonly kind: 'forget'; readonly sheet: number }
  | {
      readonly kind: 'ask';
      readonly id: number;
      readonly job: JobName;
      readonly sheet: number;
      readonly request: unknown;
    }
  | { readonly kind: 'cancel'; readonly id: number };

/** Messages from the worker about a job. `finished`, `refused` and `cancelled` are each the last one. */
export type FromWorker = { readonly id: number } & (
  | { readonly kind: 'report'; readonly report: Report<unknown> }
  | { readonly kind: 'finished'; readonly found: unknown }
  /** The job cannot be done, for example for lack of memory. */
  | { readonly kind: 'refused'; readonly reason: string }
  | { readonly kind: 'cancelled' }
);
