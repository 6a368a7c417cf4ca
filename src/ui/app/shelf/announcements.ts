import { isShelfWork, type ShelfWork } from './record';

/** What a page tells the others: work that is on the disk, a model that it no longer writes or that it has deleted. */
export type Announcement =
  { readonly kind: 'written'; readonly work: ShelfWork } | { readonly kind: 'left' | 'removed'; readonly id: string };

/** Messages between pages about the models that they write. */
export interface Announcements {
  readonly tell: (said: Announcement) => void;
  readonly close: () => void;
}

/** Pages of another version may say what this one does not understand. */
function isAnnouncement(data: unknown): data is Announcement {
  if (typeof data !== 'object' || data === null) return false;
  const { kind, work, id } = data as { readonly kind?: unknown; readonly work?: unknown; readonly id?: unknown };
  return kind === 'written' ? isShelfWork(work) : (kind === 'left' || kind === 'removed') && typeof id === 'string';
}

export function openAnnouncements(heard: (said: Announcement) => void): Announcements {
  const channel = new BroadcastChannel('raftmargin shelf');
  channel.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    if (isAnnouncement(data)) heard(data);
  });
  return { tell: (said) => channel.postMessage(said), close: () => channel.close() };
}
