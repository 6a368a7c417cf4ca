import { createEffect, createSignal, onCleanup, type Accessor } from 'solid-js';
import { keepScheme, keptScheme, showScheme, systemDark, type Scheme } from './shownScheme';

/** The light or dark choice, put on the page's root; `system` follows the system while the page is open. */
export function createScheme(): { scheme: Accessor<Scheme>; choose: (scheme: Scheme) => void } {
  const [scheme, setScheme] = createSignal(keptScheme());
  const system = systemDark();
  const [isDark, setDark] = createSignal(system.matches);
  const follow = (): void => {
    setDark(system.matches);
  };
  system.addEventListener('change', follow);
  onCleanup(() => system.removeEventListener('change', follow));
  createEffect(() => showScheme(scheme(), isDark()));
  return {
    scheme,
    choose: (chosen) => {
      setScheme(chosen);
      keepScheme(chosen);
    },
  };
}
