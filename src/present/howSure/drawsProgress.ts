import type { Format } from '../text/numberFormat';
import { drawsTexts } from './drawsTexts';

/**
 * What a job is doing, with the number of draws asked for.
 * @param phase of the job
 */
export function drawsDoing(phase: string, draws: number, format: Format): string {
  return phase === 'drivers' ? drawsTexts.lookingForDrivers : drawsTexts.making(format.written(String(draws)));
}
