import { wording } from '../../language/wording';
import type { Format } from '../text/numberFormat';

/** For whom, by whom and when the case was made, as a person wrote it. */
interface Prepared {
  text(part: 'by' | 'for' | 'date'): string;
}

/** Words round what a person writes under a case. */
export const ownWordsTexts = {
  label: wording`In your own words`,
  placeholder: wording`Why now, what it asks of whom, what you ask for`,
  upTo: (most: string) => wording`Printed below the finding. Up to ${most} characters.`,
  used: (length: string, most: string) => wording`${length} of ${most} characters. Printed below the finding.`,
  by: wording`Prepared by`,
  for: wording`for`,
  date: wording`date`,
} as const;

/** How many characters there may be, and are. */
export function limitText(length: number, most: number, format: Format): string {
  const limit = format.written(String(most));
  return length === 0 ? ownWordsTexts.upTo(limit) : ownWordsTexts.used(format.written(String(length)), limit);
}

/** Who prepared it for whom; blank without either. */
function preparedWho(by: string, whom: string): string {
  if (by === '') return whom === '' ? '' : wording`Prepared for ${whom}`;
  return whom === '' ? wording`Prepared by ${by}` : wording`Prepared by ${by} for ${whom}`;
}

/** The line of who prepared it for whom and when; blank without any of them. */
export function preparedLine(prepared: Prepared): string {
  const text = (part: 'by' | 'for' | 'date'): string => prepared.text(part).trim();
  const line = [preparedWho(text('by'), text('for')), text('date')].filter(Boolean).join(', ');
  return line && `${line}.`;
}
