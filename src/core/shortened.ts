/** The start of a text that may be very long, to be quoted: a field of a file may hold a million characters. */
export function shortened(text: string, most = 80): string {
  return text.length > most ? `${text.slice(0, most)}…` : text;
}
