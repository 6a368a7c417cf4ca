import type { TakenPicture } from '../../../present/picture/takenPicture';
import type { DataTable } from '../../../present/table/dataTable';

/** What can be taken out of the page. */
export interface TakenThing {
  /** What the table or the chart is called. */
  readonly caption: string;
  readonly table?: (() => DataTable) | undefined;
  readonly picture?: (() => Promise<TakenPicture>) | undefined;
  /** Whether figures are still to come; nothing is taken out until all are there. */
  readonly waits?: boolean | undefined;
}
