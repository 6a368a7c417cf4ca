import { createEffect, createSignal, onCleanup, type Accessor } from 'solid-js';

/** Whether this browser can keep the screen on. */
export const canStayOn = 'wakeLock' in navigator;

/**
 * Keeps the screen on while something lasts. The browser gives the lock up when the page is hidden; it is asked for
 * again once the page is seen. A refusal, such as by a battery saver, leaves the screen to itself.
 * @returns whether the screen is being kept on
 */
export function createWakeLock(lasts: Accessor<boolean>): Accessor<boolean> {
  const [isOn, setIsOn] = createSignal(false);
  let lock: WakeLockSentinel | undefined;
  let asking = false;
  const release = (): void => {
    void lock?.release();
    lock = undefined;
    setIsOn(false);
  };
  const ask = async (): Promise<void> => {
    if (!canStayOn || asking || lock !== undefined || !lasts() || document.visibilityState !== 'visible') return;
    asking = true;
    try {
      const given = await navigator.wakeLock.request('screen');
      lock = given;
      given.addEventListener('release', () => {
        if (lock !== given) return;
        lock = undefined;
        setIsOn(false);
      });
      setIsOn(true);
      if (!lasts()) release();
    } catch {
      setIsOn(false);
    } finally {
      asking = false;
    }
  };
  const onSight = (): void => void ask();
  document.addEventListener('visibilitychange', onSight);
  createEffect(() => {
    if (lasts()) void ask();
    else release();
  });
  onCleanup(() => {
    document.removeEventListener('visibilitychange', onSight);
    release();
  });
  return isOn;
}
