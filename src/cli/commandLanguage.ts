/** Variables of the environment that name the locale of messages, the one that counts first (POSIX.1, 8.2). */
const variables = ['LC_ALL', 'LC_MESSAGES', 'LANG'] as const;

/**
 * The language that a command speaks, as a BCP 47 tag: that of the environment's locale, `es` for `es_MX.UTF-8`. What
 * programs read is the same everywhere, so a command that writes JSON speaks English.
 * @param words after the program's name
 */
export function commandLanguage(
  words: readonly string[],
  environment: Readonly<Record<string, string | undefined>>,
): string {
  const locale = variables.map((name) => environment[name] ?? '').find((value) => value !== '') ?? '';
  const [, language = ''] = /^([a-z]{2,3})(?:[_.@]|$)/i.exec(locale) ?? [];
  return words.includes('--json') ? 'en' : language.toLowerCase() || 'en';
}
