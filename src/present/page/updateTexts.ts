import { wording, wordingOf } from '../../language/wording';

/** What there is to say about versions of the program. */
export type VersionNews =
  /** A newer version has come and waits. */
  | 'ready'
  /** Another window has gone over to a newer version. */
  | 'used elsewhere'
  /** A part of the program could not be loaded. */
  | 'part is gone';

const news: Readonly<Record<VersionNews, string>> = {
  ready: wording`A new version of Raftmargin is ready: it comes at the next start, or now.`,
  'used elsewhere': wording`Another window has gone over to a new version of Raftmargin.`,
  'part is gone': wording`A part of the program could not be loaded: there is no network, or a new version has taken its place.`,
};

export const updateTexts = {
  use: wording`Use it now`,
  later: wordingOf('not now')`Later`,
  /** Says what has happened, and what becomes of the work when the page is loaded again. */
  said: (what: VersionNews, isKept: boolean) => `${news[what]} ${isKept ? kept : unkept}`,
} as const;

const kept = wording`Your work is kept and opens as you left it.`;
const unkept = wording`Your work is not kept on this machine: save a file first.`;
