import { caseWordsSetting } from '../../app/preferences/settings/theCase';
import type { Choice } from '../../app/screenProps';

/** Parts of a case that a person writes. */
type WordPart = 'words' | 'by' | 'for' | 'date';

/** Characters that each may have. */
export const longest: Readonly<Record<WordPart, number>> = { words: 2000, by: 80, for: 80, date: 40 };

/** A person's own words, kept with the choice for each model apart, by its title. */
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
