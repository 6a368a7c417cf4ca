import type { Sheet } from '../../model/sheet';
import type { SobolIndex } from '../../study/sobolIndices';
import type { Worth } from '../../study/perfectInformation';
import type { Subject } from '../results/resultLines';
import type { DrawSpread } from './summary';

/** What is asked of draws. Cells and plans by index. */
export interface DrawsRequest {
  readonly sheet: Sheet;
  readonly subject: Subject;
  /** Another plan whose own result is drawn beside it, from the same draws. */
  readonly beside: number | undefined;
  readonly draws: number;
  readonly seed: number;
  readonly target: number;
}

/** An ask as it is sent; without a sheet, the one sent last stands. */
export type Sent = Omit<DrawsRequest, 'sheet'> & { readonly id: number; readonly sheet: Sheet | undefined };

/** Why some draws could not be computed. */
export interface FailedDraws {
  readonly cell: number;
  readonly message: string;
  /** Share of the failed draws. */
  readonly share: number;
  readonly inputs: readonly number[];
}

/** What there is to say once all draws are made. */
export interface Details {
  readonly failures: readonly FailedDraws[];
  /** Shares in % that some draws put below 0 or above 100, with how many. */
  readonly outside: readonly { readonly cell: number; readonly count: number }[];
  readonly knowingAll: Worth;
  readonly knowingEach: readonly (Worth & { readonly cell: number })[];
}

/** Indices of the inputs, each drawn apart from the others whatever the file ties together. */
export interface Indices {
  readonly points: number;
  readonly found: readonly (SobolIndex & { readonly cell: number })[];
  /** Cells that the file ties together by a correlation: the shares are not those of its own draws then. */
  readonly tied: readonly (readonly [number, number])[];
}

/** What is known so far. */
export interface DrawsFound {
  /** Draws made. */
  readonly done: number;
  readonly failed: number;
  /** Undefined where no result could be computed. */
  readonly spread: DrawSpread | undefined;
  /** No input with a range touches the result. */
  readonly certain: boolean;
  readonly details: Details | undefined;
  readonly indices: Indices | undefined;
}

export type Phase = 'draws' | 'drivers';

/** A report from where the draws are made. */
export interface Report {
  readonly phase: Phase;
  /** Of the phase, 0 to 1. */
  readonly share: number;
  /** Undefined where nothing new is known. */
  readonly found: DrawsFound | undefined;
}

export type Reply = { readonly id: number } & (
  | { readonly report: Report }
  | { readonly finished: true }
  /** It cannot be done: say, too little memory. */
  | { readonly refused: string }
);
