/** Bytes as base64url of RFC 4648, section 5, without padding. */
export function toBase64(bytes: Uint8Array): string {
  const characters = Array.from(bytes, (byte) => String.fromCharCode(byte));
  return btoa(characters.join('')).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

/** The bytes of such a text; undefined where it is none. */
export function fromBase64(text: string): Uint8Array<ArrayBuffer> | undefined {
  if (!/^[\w-]+$/.test(text)) return undefined;
  try {
    return Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (character) =>
      character.charCodeAt(0),
    );
  } catch {
    return undefined;
  }
}
