import { wording } from '../../language/wording';

/** What file systems do not take in a name, and what is not seen in one. */
const unfit = /[\u0000-\u001f\u007f\u00ad\u200b-\u200f\u202a-\u202e\u2060-\u206f\ufeff"*/:<>?\\|]+/gu;
/** The most characters of each part, and the most bytes in UTF-8, of which a whole name may have 255. */
const longest = { title: { signs: 40, bytes: 100 }, caption: { signs: 60, bytes: 140 } };

function bytesOf(sign: string): number {
  const code = sign.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x1_0000 ? 3 : 4;
}

/** A text without what does not fit a name, cut between words where it has some. */
function fit(text: string, { signs, bytes }: { readonly signs: number; readonly bytes: number }): string {
  const clean = text.replace(unfit, ' ').replace(/\s+/g, ' ').trim();
  let few = '';
  let size = 0;
  for (const sign of Array.from(clean).slice(0, signs)) {
    size += bytesOf(sign);
    if (size > bytes) break;
    few += sign;
  }
  const isCut = few.length < clean.length && few.includes(' ');
  return (isCut ? few.slice(0, few.lastIndexOf(' ')) : few).replace(/[\s.,;:]+$/, '');
}

/**
 * The name of a file that is taken out: the model's title, as far as its question, and what is taken out.
 * @param title of the model; where it is blank, its file's name
 */
export function takenName(title: string, caption: string, ending: 'csv' | 'png' | 'svg'): string {
  const question = title.split('? ')[0] ?? '';
  const parts = [fit(question, longest.title), fit(caption, longest.caption)].filter(Boolean);
  return `${parts.join(' - ') || wording`table`}.${ending}`;
}
