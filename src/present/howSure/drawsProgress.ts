import type { Format } from '../text/numberFormat';
import { drawsTexts } from './drawsTexts';
import type { Phase } from './reply';

/** What is being done for so many draws. */
export function drawsDoing(phase: Phase, draws: number, format: Format): string {
  return phase === 'draws' ? drawsTexts.making(format.written(String(draws))) : drawsTexts.lookingForDrivers;
}
