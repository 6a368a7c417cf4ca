/** What file systems do not take in a name, and what is not seen in one. */
// eslint-disable-next-line no-control-regex
const unfit = /[\u0000-\u001f\u007f\u00ad\u200b-\u200f\u202a-\u202e\u2060-\u206f\ufeff"*/:<>?\\|]+/gu;
/** Characters of each part; with both, the dash and the ending, names stay below 255 bytes in UTF-8. */
const longest = { title: 24, caption: 36 };

function fit(text: string, most: number): string {
  const clean = text.replace(unfit, ' ').replace(/\s+/g, ' ').trim();
  const few = [...clean].slice(0, most).join('');
  const whole = few.length < clean.length && few.includes(' ') ? few.slice(0, few.lastIndexOf(' ')) : few;
  return whole.replace(/[\s.,;]+$/, '');
}

/**
 * The name of a file that is taken out: the model's title, as far as its question, and what is taken out.
 * @param title of the model; where it is blank, its file's name
 */
export function takenName(title: string, caption: string, ending: 'csv' | 'png' | 'svg'): string {
  const question = title.split('? ')[0] ?? '';
  const parts = [fit(question, longest.title), fit(caption, longest.caption)].filter(Boolean);
  return `${parts.join(' - ') || 'table'}.${ending}`;
}
