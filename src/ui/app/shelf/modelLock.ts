/** The lock by which only one page writes a model. */
export interface ModelLock {
  /** Whether this page holds the lock: true once it does, false where it does not within a wait. */
  readonly held: Promise<boolean>;
  /** Resolves when this page gets the lock, however late. */
  readonly later: Promise<void>;
  /** Gives the lock back, or waits for it no longer. */
  readonly drop: () => void;
}

/** Milliseconds to wait for the lock: after a reload the page as it was before may still hold it. */
const wait = 1000;

/** Whether the browser has Web Locks. */
export function hasLocks(): boolean {
  return 'locks' in navigator;
}

/**
 * Asks the browser for the lock of a model and holds it while the page is open. Where the browser has no Web Locks,
 * every page may write.
 */
export function lockModel(id: string): ModelLock {
  const nothing = (): void => undefined;
  if (!hasLocks()) return { held: Promise.resolve(true), later: Promise.resolve(), drop: nothing };
  let drop = nothing;
  const dropped = new Promise<void>((done) => {
    drop = done;
  });
  const later = new Promise<void>((held) => {
    void navigator.locks.request(`raftmargin model ${id}`, () => {
      held();
      return dropped;
    });
  });
  const tooLate = new Promise<false>((give) => setTimeout(() => give(false), wait));
  return { held: Promise.race([later.then(() => true), tooLate]), later, drop };
}
