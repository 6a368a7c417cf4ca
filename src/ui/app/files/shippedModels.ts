import transplantHire from '../../../../models/transplant-hire.csv?url';
import densityLesson from '../../../../models/density-lesson.csv?url';
import plugMedia from '../../../../models/plug-media.csv?url';
import threeStage from '../../../../models/three-stage.csv?url';
import channelOrBench from '../../../../models/channel-or-bench.csv?url';
import { spokenLanguage } from '../../../language/language';
import type { ShippedKey } from '../../../present/page/shippedModelTexts';

/** A model that comes with the program. */
export interface ShippedModel {
  /** Its file's name without the ending. */
  readonly key: ShippedKey;
  /** The text of its file, in the language of the page. */
  readonly load: () => Promise<string>;
}

/** A shipped file with its words in the language of the page. */
export async function inPageLanguage(text: string): Promise<string> {
  if (spokenLanguage() === undefined) return text;
  const { translatedFile } = await import('../../../files/translatedFile');
  return translatedFile(text);
}

/** Models are files of the site, as they stand: nothing of them is script. */
async function textAt(address: string): Promise<string> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${answer.status} ${answer.statusText}`);
  return inPageLanguage(await answer.text());
}

export const shippedModels: readonly [ShippedModel, ...ShippedModel[]] = [
  {
    key: 'transplant-hire',
    load: () => textAt(transplantHire),
  },
  {
    key: 'density-lesson',
    load: () => textAt(densityLesson),
  },
  {
    key: 'plug-media',
    load: () => textAt(plugMedia),
  },
  {
    key: 'three-stage',
    load: () => textAt(threeStage),
  },
  {
    key: 'channel-or-bench',
    load: () => textAt(channelOrBench),
  },
];
