/** A name as it stands in a formula: not a part of another, nor the letter of an exponent. All places of it. */
export function standingName(name: string): RegExp {
  return new RegExp(`(?<![A-Za-z0-9_.])${name}(?![A-Za-z0-9_])`, 'g');
}

/** Whether a formula has a name in it. */
export function hasName(text: string, name: string): boolean {
  return text.includes(name) && standingName(name).test(text);
}
