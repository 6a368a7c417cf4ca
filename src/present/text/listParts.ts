import { spokenLanguage } from '../../language/language';

/** A stretch of a list in words: one of its items, or what stands between two. */
interface ListPart {
  readonly text: string;
  /** The item's index; undefined between two. */
  readonly item: number | undefined;
}

let lists: Intl.ListFormat | undefined;

/** A list as the language of the page writes it, in parts: `a, b and c`. */
export function listParts(items: readonly string[]): ListPart[] {
  // As in Britain, without a comma before the last.
  lists ??= new Intl.ListFormat(spokenLanguage()?.tag ?? 'en-GB', { type: 'conjunction' });
  let item = 0;
  return lists
    .formatToParts(items)
    .map(({ type, value }) => ({ text: value, item: type === 'element' ? item++ : undefined }));
}
