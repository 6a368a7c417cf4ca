import { boardsOf, type CropNames } from '../stageNames';
import { plainly, say, sentences, type Phrase } from '../../text/phrase';
import { space, type Format } from '../../text/numberFormat';
import { days, percent, shown } from '../../text/quantities';
import type { Crowding, StageCrowding, YieldFound } from './crowding';

function stageSentence(
  { index, day, crowded, touching }: StageCrowding,
  names: CropNames,
  unit: string,
  format: Format,
): Phrase {
  const boards = boardsOf(names, index).many;
  const spread = `${shown(touching, 1, format)}${space}${unit}`;
  const long = days(crowded, format);
  if (day === undefined) return say`On ${boards} the leaves do not touch: they would at a spread of ${spread}.`;
  if (day.isZero())
    return say`On ${boards} the leaves touch from the start, at a spread of ${spread}: ${long} crowded.`;
  const free = days(day, format);
  return say`On ${boards} the leaves touch after ${free}, at a spread of ${spread}: ${long} crowded.`;
}

/** When leaves touch, stage by stage, and the share kept after that. */
export function crowdingSentence({ stages, kept }: Crowding, names: CropNames, unit: string, format: Format): Phrase {
  const sentence = stages.map((stage) => stageSentence(stage, names, unit, format));
  return sentences(...sentence, kept.isNaN() ? [] : say`After that ${percent(kept, format)} is kept.`);
}

/** What the law through two trials says of today's density. */
export function yieldSentence(
  { mass, perBoard, fits }: YieldFound,
  density: string,
  names: CropNames,
  format: Format,
): Phrase {
  if (!fits) return say`These two trials do not bend as the law does: it takes lighter plants where they stand closer.`;
  const [each, all] = [mass, perBoard].map((grams) => `${shown(grams, 0, format)}${space}g`) as [string, string];
  const [board, plant] = [plainly(names.board.one), plainly(names.plant.one)];
  return say`At today’s ${density} on a ${board} a ${plant} comes to ${each}, and all of them to ${all}.`;
}
