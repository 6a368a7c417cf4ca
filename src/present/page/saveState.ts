import { wording } from '../../language/wording';

/** Whether the work is saved on this machine. */
export type SaveState =
  /** Nothing was changed yet. */
  | { readonly state: 'nothing' }
  /** A change is not saved yet. */
  | { readonly state: 'waiting' }
  /** Everything is saved, since the time given. */
  | { readonly state: 'kept'; readonly at: Date }
  /** It is not saved; with `again` it is tried until it works. */
  | { readonly state: 'failed'; readonly reason: string; readonly again?: boolean | undefined }
  /** Another page writes this model; this page shows what it writes. */
  | { readonly state: 'following' }
  /** Another page has deleted this model. */
  | { readonly state: 'gone' };

const texts = {
  nothing: wording`Nothing changed yet`,
  waiting: wording`Not kept on this machine yet`,
  kept: (time: string) => wording`Kept on this machine at ${time}`,
  failed: (reason: string) => wording`Not kept on this machine: ${reason}. Save a file before you leave.`,
  tried: (reason: string) =>
    wording`Not kept on this machine yet: ${reason}. It is tried again until it works; save a file before you leave.`,
  following: wording`Also open elsewhere: what is changed there shows here. A change here makes a copy.`,
  gone: wording`Deleted in another window. Your next change here keeps it again.`,
} as const;

/**
 * The text that shows a save state.
 * @param locale in which the time is written
 */
export function saveStateText(kept: SaveState, locale: string): string {
  if (kept.state === 'failed') return (kept.again === true ? texts.tried : texts.failed)(kept.reason);
  if (kept.state !== 'kept') return texts[kept.state];
  return texts.kept(kept.at.toLocaleTimeString(locale, { hour: '2-digit', minute: '2-digit' }));
}
