/** Writes a text into a text node, unless it is there already. */
export function writeText(place: Text, text: string): void {
  if (place.data !== text) place.data = text;
}
