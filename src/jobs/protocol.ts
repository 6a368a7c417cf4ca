import type { Sheet, SheetRow } from '../model/sheet';
import type { Report } from './job';
import type { JobName } from './jobs';

/** A model's text: whole, or the rows in which it differs from one that was sent before. */
export type SheetText = { readonly whole: Sheet } | { readonly like: number; readonly rows: readonly SheetRow[] };

/** What the page tells the worker. Jobs and sheets have numbers of their own, each used once. */
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

/** What the worker tells the page of a job. After `finished`, `refused` and `cancelled` there is nothing more of it. */
export type FromWorker = { readonly id: number } & (
  | { readonly kind: 'report'; readonly report: Report<unknown> }
  | { readonly kind: 'finished'; readonly found: unknown }
  /** It cannot be done: say, too little memory. */
  | { readonly kind: 'refused'; readonly reason: string }
  | { readonly kind: 'cancelled' }
);
