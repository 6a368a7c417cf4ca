import { batch } from 'solid-js';
import { questionSetting, togetherEntrySetting } from '../../app/preferences/settings/page';
import type { Choice } from '../../app/screenProps';

/**
 * Opens the picture of how entries hang together.
 * @param entry name of the one in the middle; blank for the whole model
 */
export function openTogether(choice: Choice, entry: string): void {
  batch(() => {
    choice.set(togetherEntrySetting, entry);
    choice.set(questionSetting, 'together');
  });
}
