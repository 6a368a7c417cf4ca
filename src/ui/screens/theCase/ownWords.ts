import { caseWordsSetting } from '../../app/preferences/settings/theCase';
import type { Choice } from '../../app/screenProps';

/** The texts of a case that a person writes. */
type WordPart = 'words' | 'by' | 'for' | 'date';

/** The most characters of each. */
export const longest: Readonly<Record<WordPart, number>> = { words: 2000, by: 80, for: 80, date: 40 };

/** A person's own texts of the case, kept among the choices for each model by its title. */
export interface OwnWords {
  text(part: WordPart): string;
  write(part: WordPart, text: string): void;
}

export function ownWords(choice: Pick<Choice, 'get' | 'set'>, title: () => string): OwnWords {
  return {
    text: (part) => choice.get(caseWordsSetting(part, title())),
    write: (part, text) => choice.set(caseWordsSetting(part, title()), text.slice(0, longest[part])),
  };
}
