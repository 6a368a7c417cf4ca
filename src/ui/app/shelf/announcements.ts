import { isShelfWork, type ShelfWork } from './record';

/** What pages tell one another of the models that they write. */
export interface Announcements {
  /** Tells the other pages of work that is on the disk. */
  readonly tell: (work: ShelfWork) => void;
  readonly close: () => void;
}

/** @param heard is called with the work that another page has written */
export function openAnnouncements(heard: (work: ShelfWork) => void): Announcements {
  const channel = new BroadcastChannel('raftmargin shelf');
  channel.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    if (isShelfWork(data)) heard(data);
  });
  return { tell: (work) => channel.postMessage(work), close: () => channel.close() };
}
