import { fileTexts } from '../../../present/page/fileTexts';
import type { Drafts } from '../store/drafts';
import type { ModelStore } from '../store/modelStore';
import { download, fileText } from './saving';

/** Saves the model as a file. Returns the message about it. */
export function saveModel(store: ModelStore, drafts: Drafts): string {
  const { name } = store.origin();
  download(name, fileText(store));
  return fileTexts.saved(name, drafts.all().length);
}
