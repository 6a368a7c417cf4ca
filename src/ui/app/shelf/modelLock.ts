/** Whether this page may write a model. */
export interface ModelLock {
  /** Resolves to true once no other page holds the model, or at once where it is free; to false after a wait. */
  readonly held: Promise<boolean>;
  /** Resolves when the model is this page's, however late. */
  readonly later: Promise<void>;
}

/** A page that is loaded again may find its own lock of before for so many milliseconds. */
const wait = 1000;

/**
 * One writer a model: asks the browser for its lock and holds it while the page is open. Where the browser has no locks
 * (Web Locks), every page may write.
 */
export function lockModel(id: string): ModelLock {
  if (!('locks' in navigator)) return { held: Promise.resolve(true), later: Promise.resolve() };
  const later = new Promise<void>((held) => {
    void navigator.locks.request(`raftmargin model ${id}`, () => {
      held();
      return new Promise<never>(() => undefined);
    });
  });
  const tooLate = new Promise<false>((give) => setTimeout(() => give(false), wait));
  return { held: Promise.race([later.then(() => true), tooLate]), later };
}
