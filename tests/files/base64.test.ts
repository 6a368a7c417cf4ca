import { describe, expect, it } from 'vitest';
import { fromBase64, toBase64 } from '../../src/files/base64';

describe('bytes as text', () => {
  // Test vectors of RFC 4648, section 10, without their padding.
  it.each([
    ['f', 'Zg'],
    ['fo', 'Zm8'],
    ['foo', 'Zm9v'],
    ['foobar', 'Zm9vYmFy'],
  ])('%s is %s', (text, packed) => {
    expect(toBase64(new TextEncoder().encode(text))).toBe(packed);
    expect(new TextDecoder().decode(fromBase64(packed))).toBe(text);
  });

  it('keeps every byte, in letters that an address may hold', () => {
    const bytes = Uint8Array.from({ length: 256 }, (_byte, i) => 255 - i);
    expect(toBase64(bytes)).toMatch(/^[\w-]+$/);
    expect(fromBase64(toBase64(bytes))).toEqual(bytes);
    // As Node writes it.
    expect(toBase64(bytes)).toBe(Buffer.from(bytes).toString('base64url'));
  });

  it.each(['', 'a b', 'Zm9v=', 'Z', '{}'])('is not read from %j', (text) => {
    expect(fromBase64(text)).toBeUndefined();
  });
});
