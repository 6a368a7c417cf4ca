import { onCleanup, onMount } from 'solid-js';
import type { Problem } from '../../../core/problem';
import type { SharedFile } from '../../../files/sharedFile';

/** The part that takes a model out of a link, which few visits need. */
const sharing = () => import('../../../files/share');

/** Start of a link's fragment, the part of an address that browsers do not send to a server. */
export const linkStart = '#model=';
/** Before the step of a lesson, behind the model. */
export const stepStart = '&step=';

/** The page's address without the model of a link. */
export function ownAddress(): string {
  return location.href.split('#', 1)[0] ?? '';
}

/**
 * Opens the model in the page's address, now and whenever such an address is entered.
 * @param open is given the model, and the number of the step where the address names one of a lesson
 */
export function listenForLinks(
  open: (found: SharedFile | { readonly problem: Problem }, step: number | undefined) => void,
): void {
  const follow = (address: string): void => {
    const { hash } = new URL(address);
    if (!hash.startsWith(linkStart)) return;
    // The model is now like any other one: a reload opens the kept work and not the link.
    if (location.hash === hash) history.replaceState(null, '', ownAddress());
    const [packed = '', step = ''] = hash.slice(linkStart.length).split(stepStart);
    void sharing()
      .then(({ unpackShared }) => unpackShared(packed))
      .then((found) => open(found, /^\d{1,4}$/.test(step) ? Number(step) : undefined));
  };
  // The places of the program may have taken the address’s place before its change is told.
  const changed = ({ newURL }: HashChangeEvent): void => follow(newURL);
  onMount(() => follow(location.href));
  addEventListener('hashchange', changed);
  onCleanup(() => removeEventListener('hashchange', changed));
}
