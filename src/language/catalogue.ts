import { IntlMessageFormat, PART_TYPE } from 'intl-messageformat';
import type { Language, Message } from './language';
import { pluralBy, type Endings } from './plural';

/** What a file of `catalogues/` holds: a language, named by the file. */
export interface Catalogue {
  /** For the words of units that a person's own model brings along. */
  readonly endings: Endings;
  /**
   * The texts of the program by their English wording (see `textKey`), in ICU MessageFormat: `{0}`, `{1}` … stand for
   * what is put in, and `{0, plural, one {…} other {…}}` for what depends on a number.
   */
  readonly texts: Readonly<Record<string, string>>;
  /** The texts of the shipped models and trials by the English ones, as they stand in a file. */
  readonly models: Readonly<Record<string, string>>;
}

/** A language and its texts, as one part of the program hands them to another. */
export interface LanguageTexts {
  /** BCP 47. */
  readonly tag: string;
  readonly catalogue: Catalogue;
}

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
function messageOf(text: string, tag: string): Message {
  // Most texts have nothing to put in; they need not be read.
  if (!/[{']/.test(text)) return () => [text];
  const format = new IntlMessageFormat(text, tag, undefined, { ignoreTag: true });
  return (counts) =>
    format
      .formatToParts<Place>(Object.fromEntries(counts.map((count, index) => [index, new Place(index, count)])))
      .map((part) => (part.type === PART_TYPE.literal ? part.value : part.value.index));
}

/** @param tag BCP 47, whose plurals are meant */
export function languageOf(tag: string, { endings, texts, models }: Catalogue): Language {
  const [ofProgram, ofModels] = [new Map(Object.entries(texts)), new Map(Object.entries(models))];
  return {
    tag,
    message: (key) => {
      const text = ofProgram.get(key);
      if (text !== undefined) return messageOf(text, tag);
      // Braces in a model's texts are its own.
      const own = ofModels.get(key);
      return own === undefined ? undefined : () => [own];
    },
    plural: (noun) => pluralBy(endings, noun),
  };
}
