import { packShared } from '../../../files/share';
import { fileTexts } from '../../../present/page/fileTexts';
import type { Drafts } from '../store/drafts';
import type { ModelStore } from '../store/modelStore';
import { linkStart, ownAddress, stepStart } from './modelLink';
import { fileText } from './saving';

/** Puts a link where a person can copy it: on the clipboard or, where that is not allowed, in the page's address. */
async function handOver(link: string): Promise<'clipboard' | 'address'> {
  try {
    await navigator.clipboard.writeText(link);
    return 'clipboard';
  } catch {
    history.replaceState(null, '', link);
    return 'address';
  }
}

/**
 * Copies a link that holds the file. Returns the message about it, also where there can be no link.
 * @param step of the lesson that the file is, at which the link opens it
 */
export async function copyLink(store: ModelStore, drafts: Drafts, step?: number): Promise<string> {
  const packed = await packShared({ name: store.origin().name, bytes: new TextEncoder().encode(fileText(store)) });
  if (typeof packed !== 'string') return fileTexts.noLink(packed.problem.message);
  const link = `${ownAddress()}${linkStart}${packed}${step === undefined ? '' : `${stepStart}${step}`}`;
  const told = (await handOver(link)) === 'clipboard' ? fileTexts.linkCopied : fileTexts.linkInAddress;
  return told(drafts.all().length);
}
