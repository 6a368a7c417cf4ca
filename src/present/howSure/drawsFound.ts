import type { SobolIndex } from '../../study/sobolIndices';
import type { Worth } from '../../study/perfectInformation';
import type { DrawSpread } from './summary';

/** Why some draws could not be computed. */
interface FailedDraws {
  readonly cell: number;
  readonly message: string;
  /** Their share of the failed draws. */
  readonly share: number;
  readonly inputs: readonly number[];
}

/** Figures that are known once all draws are made. */
export interface Details {
  readonly failures: readonly FailedDraws[];
  /** Shares in % that some draws put below 0 or above 100, with how many. */
  readonly outside: readonly { readonly cell: number; readonly count: number }[];
  readonly knowingAll: Worth;
  readonly knowingEach: readonly (Worth & { readonly cell: number })[];
}

/** Sobol' indices of the inputs. All inputs are drawn as independent for them, whatever correlations the file has. */
export interface Indices {
  readonly points: number;
  readonly found: readonly (SobolIndex & { readonly cell: number })[];
  /** Pairs of cells that the file correlates. Their indices do not describe the correlated draws. */
  readonly tied: readonly (readonly [number, number])[];
}

/** What draws of a result have found so far. */
export interface DrawsFound {
  /** Number of draws made. */
  readonly done: number;
  readonly failed: number;
  /** Undefined where no result could be computed. */
  readonly spread: DrawSpread | undefined;
  /** The results, ascending, once all draws are made and where they were asked for. */
  readonly sorted?: Float64Array | undefined;
  /** True where no input with a range affects the result. */
  readonly certain: boolean;
  readonly details: Details | undefined;
  readonly indices: Indices | undefined;
}
