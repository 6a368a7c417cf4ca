import type { Problem } from '../../core/problem';

/** A stretch of a message: in our words, or quoted from the file. */
export interface MessagePart {
  readonly text: string;
  readonly quoted: boolean;
}

/** A fault's message, cut where it quotes the text at fault for the first time; in one piece where it does not. */
export function quotedParts({ message, where }: Pick<Problem, 'message' | 'where'>): MessagePart[] {
  const at = where.text === '' ? -1 : message.indexOf(where.text);
  if (at < 0) return [{ text: message, quoted: false }];
  const end = at + where.text.length;
  const parts = [
    { text: message.slice(0, at), quoted: false },
    { text: where.text, quoted: true },
    { text: message.slice(end), quoted: false },
  ];
  return parts.filter(({ text }) => text !== '');
}
