import type { SobolIndex } from '../../study/sobolIndices';
import type { Worth } from '../../study/perfectInformation';
import type { DrawSpread } from './summary';

/** Why some draws could not be computed. */
interface FailedDraws {
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

/** What draws of a result have found so far. */
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
