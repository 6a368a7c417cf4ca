import { readText, writeText } from './textStorage';

export const schemes = ['system', 'light', 'dark'] as const;
export type Scheme = (typeof schemes)[number];

const key = 'raftmargin scheme';

/** The kept scheme; `system` where there is none, or the browser refuses storage. */
export function keptScheme(): Scheme {
  const kept = readText('localStorage', key);
  return schemes.find((scheme) => scheme === kept) ?? 'system';
}

export function keepScheme(scheme: Scheme): void {
  writeText('localStorage', key, scheme);
}

/** Whether the system is dark. */
export const systemDark = (): MediaQueryList => matchMedia('(prefers-color-scheme: dark)');

/** Puts a scheme on the page's root. */
export function showScheme(scheme: Scheme = keptScheme(), isSystemDark = systemDark().matches): void {
  document.documentElement.dataset['scheme'] = scheme === 'system' ? (isSystemDark ? 'dark' : 'light') : scheme;
}
