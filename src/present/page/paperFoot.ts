import { shortened } from '../../core/shortened';

/** Characters of a name that fit below a page in two lines. */
const longest = 140;

/**
 * The line below each printed page: `Does a hire pay? – Raftmargin · 9 March 2031`.
 * @param name of the window
 * @param at the day on which it is printed, in the time zone of the browser
 */
export function paperFoot(name: string, at: Date, locale: string): string {
  return `${shortened(name, longest).replace(/\s+/g, ' ')} · ${new Intl.DateTimeFormat(locale, { dateStyle: 'long' }).format(at)}`;
}
