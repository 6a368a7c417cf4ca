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

export function ownWords(choice: Pick<Choice, 'setting' | 'setSetting'>, title: () => string): OwnWords {
  const key = (part: WordPart): string => `case ${part} ${title()}`;
  return {
    text: (part) => choice.setting(key(part)),
    write: (part, text) => choice.setSetting(key(part), text.slice(0, longest[part])),
  };
}
