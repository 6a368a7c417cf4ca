import { packShared } from '../../../files/share';
import { fileTexts } from '../../../present/page/fileTexts';
import type { Drafts } from '../store/drafts';
import type { ModelStore } from '../store/modelStore';
import { linkStart, ownAddress } from './modelLink';
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

/** Copies a link that holds the file. Returns the message about it, also where there can be no link. */
export async function copyLink(store: ModelStore, drafts: Drafts): Promise<string> {
  const packed = await packShared({ name: store.origin().name, bytes: new TextEncoder().encode(fileText(store)) });
  if (typeof packed !== 'string') return fileTexts.noLink(packed.problem.message);
  const told =
    (await handOver(`${ownAddress()}${linkStart}${packed}`)) === 'clipboard'
      ? fileTexts.linkCopied
      : fileTexts.linkInAddress;
  return told(drafts.all().length);
}
