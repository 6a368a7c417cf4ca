import type { Format } from '../text/numberFormat';
import { drawsTexts } from './drawsTexts';

/**
 * What is being done for so many draws.
 * @param phase of the job
 */
export function drawsDoing(phase: string, draws: number, format: Format): string {
  return phase === 'drivers' ? drawsTexts.lookingForDrivers : drawsTexts.making(format.written(String(draws)));
}
