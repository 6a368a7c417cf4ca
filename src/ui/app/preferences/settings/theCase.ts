import { text, type Setting } from './setting';

/** What a person writes in a part of the case, for each model apart, by its title. */
export function caseWordsSetting(part: 'words' | 'by' | 'for' | 'date', title: string): Setting<string> {
  return text(`case ${part} ${title}`);
}
