import { shelfTexts } from '../../../present/page/shelfTexts';
import { reasonText } from '../reasonText';

/** Why the storage failed; of a full one browsers say little or nothing. */
export function storageFault(reason: unknown): string {
  const isFull = reason instanceof DOMException && reason.name === 'QuotaExceededError';
  return isFull ? shelfTexts.full : reasonText(reason);
}
