import type { Problem } from '../../../core/problem';
import { liveCaseIn } from '../../../files/live/liveFile';
import type { SharedFile } from '../../../files/sharedFile';

/** The file of the model in a live page; a file that is none is given back. */
export function modelInPage(given: SharedFile): SharedFile | { readonly problem: Problem } {
  const live = liveCaseIn(given.bytes);
  if (live === undefined || 'problem' in live) return live ?? given;
  return live.file;
}
