import { wording } from '../../language/wording';
import { problem, type Problem } from '../../core/problem';
import { liveCaseText, readLiveCase, type LiveCase } from './liveCase';

/** Most bytes of a live file: what mail passes on without a question (common practice, no source). */
export const liveLimit = 600_000;

/** Places in the page of a live file at which it is filled in; `vite.live.config.ts` writes them. */
const titlePlace = '<!--title-->';
const textPlace = '<!--text-->';
const casePlace = '<!--case-->';

/** The element that holds the case. */
const [opening, closing] = ['<script type="application/json" id="live-case">', '</script>'] as const;

/** What a page without its script shows: HTML in which all texts are escaped. */
export interface LiveTexts {
  readonly title: string;
  readonly text: string;
}

/**
 * One HTML file with a case inside.
 * @param page the built page, with its three places
 * @returns the file's text, or why it would be too large
 */
export function liveFile(page: string, { title, text }: LiveTexts, live: LiveCase): string | { problem: Problem } {
  const filled = page
    .replace(titlePlace, () => title)
    .replace(textPlace, () => text)
    .replace(casePlace, () => `${opening}${liveCaseText(live)}${closing}`);
  const size = new Blob([filled]).size;
  if (size <= liveLimit) return filled;
  const [kilobytes, most] = [Math.ceil(size / 1000), liveLimit / 1000];
  const message = wording`too large for a live page: ${kilobytes} kB, at most ${most}. Send the model's own file.`;
  return { problem: problem('live-case-too-large', message) };
}

/** Whether bytes begin as a page does, and not as a table. */
function isPage(bytes: Uint8Array): boolean {
  const start = new TextDecoder().decode(bytes.subarray(0, 100));
  return /^\s*<!doctype html>/i.test(start);
}

/** The case in a file's bytes, why it cannot be read, or undefined where they are no page. */
export function liveCaseIn(bytes: Uint8Array): LiveCase | { readonly problem: Problem } | undefined {
  if (!isPage(bytes)) return undefined;
  const text = new TextDecoder().decode(bytes);
  const from = text.indexOf(opening);
  if (from === -1) {
    const message = wording`page without a model: this is not a live page, or its end is missing. Open a model’s file (CSV).`;
    return { problem: problem('no-live-case', message) };
  }
  // The case holds no such sign; cut off within it, what is left is no JSON, and is told so.
  const [held = ''] = text.slice(from + opening.length).split('<', 1);
  return readLiveCase(held);
}
