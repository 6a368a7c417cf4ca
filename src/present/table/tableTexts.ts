import { wording } from '../../language/wording';

/** Words in tables that are taken out. */
export const tableTexts = {
  /** The head of the column that names the units of the column before it; `column` may be blank. */
  unitOf: (column: string) => (column === '' ? wording`unit` : wording`unit of ${column}`),
} as const;
