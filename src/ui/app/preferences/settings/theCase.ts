import { text, type Setting } from './setting';

/** A text that a person writes in the case, kept for each model by its title. */
export function caseWordsSetting(part: 'words' | 'by' | 'for' | 'date', title: string): Setting<string> {
  return text(`case ${part} ${title}`);
}
