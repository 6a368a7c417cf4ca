import { spokenLanguage, textKey } from './language';

/**
 * A text that comes from data of the program and not from its code, such as a unit's name or a label of a shipped
 * model; as it is in English, and where the language has no other.
 * @param context what is meant, where the text by itself may mean several things
 */
export function translated(text: string, context?: string): string {
  const pieces = text === '' ? undefined : spokenLanguage()?.message(textKey([text], context))?.([]);
  return pieces === undefined ? text : pieces.filter((piece) => typeof piece === 'string').join('');
}
