/** Puts a text into its place; the page is left alone where it stands there already. */
export function writeText(place: Text, text: string): void {
  if (place.data !== text) place.data = text;
}
