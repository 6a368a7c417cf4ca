import { onCleanup, onMount } from 'solid-js';
import type { Problem } from '../../../core/problem';
import type { SharedFile } from '../../../files/share';

/** The part that packs a model into a link and takes it out, which few visits need. */
const sharing = () => import('../../../files/share');

/** Start of a link's fragment, the part of an address that browsers do not send to a server. */
const start = '#model=';

/** The page's address without the model of a link. */
function ownAddress(): string {
  return location.href.split('#', 1)[0] ?? '';
}

/** The address that opens a model file in this program, or why there is none. */
export async function linkTo(file: SharedFile): Promise<string | { readonly problem: Problem }> {
  const packed = await (await sharing()).packShared(file);
  return typeof packed === 'string' ? `${ownAddress()}${start}${packed}` : packed;
}

/** Puts a link where a person can copy it: on the clipboard or, where that is not allowed, in the page's address. */
export async function handOver(link: string): Promise<'clipboard' | 'address'> {
  try {
    await navigator.clipboard.writeText(link);
    return 'clipboard';
  } catch {
    history.replaceState(null, '', link);
    return 'address';
  }
}

/** Opens the model in the page's address, now and whenever such an address is entered. */
export function listenForLinks(open: (found: SharedFile | { readonly problem: Problem }) => void): void {
  const follow = (): void => {
    const { hash } = location;
    if (!hash.startsWith(start)) return;
    // The model is now like any other one: a reload opens the kept work and not the link.
    history.replaceState(null, '', ownAddress());
    void sharing()
      .then(({ unpackShared }) => unpackShared(hash.slice(start.length)))
      .then(open);
  };
  onMount(follow);
  addEventListener('hashchange', follow);
  onCleanup(() => removeEventListener('hashchange', follow));
}
