/** The start of a text that may be very long, to be quoted in a message: a file may hold a million characters a field. */
export function shortened(text: string, most = 80): string {
  return text.length > most ? `${text.slice(0, most)}…` : text;
}
