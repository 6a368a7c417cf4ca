import { createSignal, onCleanup, type Accessor } from 'solid-js';
import type { VersionNews } from '../../../present/page/updateTexts';

/** What is to be said about versions of the program, and what can be done about it. */
export interface Versions {
  readonly news: Accessor<VersionNews | undefined>;
  /** Loads this page again, in the new version where one waits. */
  readonly load: () => void;
  readonly dismiss: () => void;
}

/** Built next to the page by `vite.config.ts`; the development server has none. */
const script = './offline.js';

/** Milliseconds in which a page draws itself: bringing the whole site onto the machine at once would slow that down. */
const drawn = 3000;

/** Asks for the page's worker once the page has come; undefined where the browser allows none. */
async function registered(): Promise<ServiceWorkerRegistration | undefined> {
  if (document.readyState !== 'complete') await new Promise((go) => addEventListener('load', go, { once: true }));
  await new Promise((go) => setTimeout(go, drawn));
  return navigator.serviceWorker.register(script).catch(() => undefined);
}

/** Calls back for each worker that is ready to take the place of the one at work. */
function watch(registration: ServiceWorkerRegistration, back: () => void): void {
  const look = (): void => {
    if (registration.waiting !== null && registration.active !== null) back();
  };
  registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', look));
  look();
}

/**
 * Registers the worker that keeps the whole site on this machine. A new one waits until `load` is called or every
 * page is closed, so that a page finds all parts of its own version for as long as it is open.
 */
export function createVersions(): Versions {
  const [news, setNews] = createSignal<VersionNews>();
  let registration: ServiceWorkerRegistration | undefined;
  let isLoading = false;
  const lacking = (): void => {
    setNews('part is gone');
  };
  addEventListener('vite:preloadError', lacking);
  onCleanup(() => removeEventListener('vite:preloadError', lacking));
  if (import.meta.env.PROD && 'serviceWorker' in navigator) {
    const { serviceWorker } = navigator;
    let isFirst = serviceWorker.controller === null;
    serviceWorker.addEventListener('controllerchange', () => {
      if (isLoading) location.reload();
      else if (!isFirst) setNews('used elsewhere');
      isFirst = false;
    });
    void registered().then((found) => {
      registration = found;
      if (found === undefined) return;
      watch(found, () => setNews('ready'));
      document.addEventListener('visibilitychange', () => {
        if (document.visibilityState === 'visible') found.update().catch(() => undefined);
      });
    });
  }
  return {
    news,
    load: () => {
      isLoading = true;
      const waiting = registration?.waiting;
      if (waiting) waiting.postMessage({ type: 'SKIP_WAITING' });
      else location.reload();
    },
    dismiss: () => setNews(undefined),
  };
}
