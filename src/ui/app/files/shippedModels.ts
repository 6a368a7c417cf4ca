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
  /** Asks for its file before it is loaded, once. */
  readonly askAhead: () => void;
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
  return answer.text();
}

function shipped(key: ShippedKey, address: string): ShippedModel {
  let ahead: Promise<string> | undefined;
  return {
    key,
    askAhead: () => {
      ahead = textAt(address);
      // Told by whoever loads it.
      ahead.catch(() => undefined);
    },
    load: async () => {
      const text = ahead ?? textAt(address);
      ahead = undefined;
      return inPageLanguage(await text);
    },
  };
}

export const shippedModels: readonly [ShippedModel, ...ShippedModel[]] = [
  shipped('transplant-hire', transplantHire),
  shipped('density-lesson', densityLesson),
  shipped('plug-media', plugMedia),
  shipped('three-stage', threeStage),
  shipped('channel-or-bench', channelOrBench),
];
