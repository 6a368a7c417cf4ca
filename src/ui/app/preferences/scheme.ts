import { createEffect, createSignal, onCleanup, type Accessor } from 'solid-js';
import { readText, writeText } from './textStorage';

export const schemes = ['system', 'light', 'dark'] as const;
export type Scheme = (typeof schemes)[number];

const key = 'raftmargin scheme';

/** The kept scheme; `system` where there is none, or the browser refuses storage. */
function remembered(): Scheme {
  const kept = readText('localStorage', key);
  return schemes.find((scheme) => scheme === kept) ?? 'system';
}

/** The light or dark choice, put on the page's root; `system` follows the system while the page is open. */
export function createScheme(): { scheme: Accessor<Scheme>; choose: (scheme: Scheme) => void } {
  const [scheme, setScheme] = createSignal(remembered());
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const [systemDark, setSystemDark] = createSignal(dark.matches);
  const follow = (): void => {
    setSystemDark(dark.matches);
  };
  dark.addEventListener('change', follow);
  onCleanup(() => dark.removeEventListener('change', follow));
  createEffect(() => {
    const shown = scheme() === 'system' ? (systemDark() ? 'dark' : 'light') : scheme();
    document.documentElement.dataset['scheme'] = shown;
  });
  return {
    scheme,
    choose: (chosen) => {
      setScheme(chosen);
      writeText('localStorage', key, chosen);
    },
  };
}
