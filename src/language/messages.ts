import { IntlMessageFormat, PART_TYPE } from 'intl-messageformat';
import type { Catalogue, Message } from './catalogue';

/**
 * The texts of a language by their English wording (see `textKey`), each in ICU MessageFormat: `{0}`, `{1}` … stand for
 * what is put in, and `{0, plural, one {…} other {…}}` for what depends on a number.
 */
export type Texts = Readonly<Record<string, string>>;

/** Something that is put into a text: as a number it is what plurals depend on. */
class Place {
  constructor(
    readonly index: number,
    private readonly count: number,
  ) {}

  valueOf(): number {
    return this.count;
  }
}

/** @throws SyntaxError where the text is not written in ICU MessageFormat */
function messageOf(text: string, language: string): Message {
  // Most texts have nothing to put in; they need not be read.
  if (!/[{']/.test(text)) return () => [text];
  const format = new IntlMessageFormat(text, language, undefined, { ignoreTag: true });
  return (counts) =>
    format
      .formatToParts<Place>(Object.fromEntries(counts.map((count, index) => [index, new Place(index, count)])))
      .map((part) => (part.type === PART_TYPE.literal ? part.value : part.value.index));
}

/** @param language whose plurals are meant, as a BCP 47 tag such as `es` */
export function catalogueOf(language: string, texts: Texts): Catalogue {
  const byKey = new Map(Object.entries(texts));
  return (key) => {
    const text = byKey.get(key);
    return text === undefined ? undefined : messageOf(text, language);
  };
}
