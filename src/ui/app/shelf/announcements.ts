import { isShelfWork, type ShelfWork } from './record';

/** Messages between pages about the models that they write. */
export interface Announcements {
  /** Tells the other pages what has been written to the disk. */
  readonly tell: (work: ShelfWork) => void;
  readonly close: () => void;
}

/** @param heard is called with work that another page has written */
export function openAnnouncements(heard: (work: ShelfWork) => void): Announcements {
  const channel = new BroadcastChannel('raftmargin shelf');
  channel.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    if (isShelfWork(data)) heard(data);
  });
  return { tell: (work) => channel.postMessage(work), close: () => channel.close() };
}
