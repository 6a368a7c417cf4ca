import { readdirSync, readFileSync } from 'node:fs';
import { deflateSync, inflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { longestShared, packShared, unpackShared } from '../../src/files/share';
import type { SharedFile } from '../../src/files/sharedFile';
import type { Problem } from '../../src/core/problem';

const bytesOf = (text: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(text);

async function packed(name: string, bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const text = await packShared({ name, bytes });
  if (typeof text !== 'string') throw new Error(text.problem.message);
  return text;
}

async function unpacked(text: string): Promise<SharedFile> {
  const found = await unpackShared(text);
  if ('problem' in found) throw new Error(found.problem.message);
  return found;
}

async function refusal(text: string): Promise<Problem | undefined> {
  const found = await unpackShared(text);
  return 'problem' in found ? found.problem : undefined;
}

const models = readdirSync('models').filter((name) => name.endsWith('.csv'));

describe('a model file in a link', () => {
  it.each(models)('%s comes back byte for byte', async (name) => {
    const bytes = new Uint8Array(readFileSync(`models/${name}`));
    const text = await packed(name, bytes);
    expect(text.length).toBeLessThan(longestShared);
    expect(text).toMatch(/^[\w-]+$/);
    expect(await unpacked(text)).toEqual({ name, bytes });
  });

  it('keeps a byte-order mark, line ends and letters of any script', async () => {
    const bytes = bytesOf('\ufeffname,formula\r\nsalát_č,1\r\n');
    expect(await unpacked(await packed('čaj 生菜.csv', bytes))).toEqual({ name: 'čaj 生菜.csv', bytes });
  });

  it('may be an empty file', async () => {
    expect(await unpacked(await packed('a.csv', bytesOf('')))).toEqual({ name: 'a.csv', bytes: bytesOf('') });
  });
});

// RFC 1950 and RFC 4648, section 5, as Node.js implements them (zlib, Buffer).
describe('the text of a link, against another implementation', () => {
  it('is zlib data in base64url: the name, a line feed and the file', async () => {
    const text = await packed('a.csv', bytesOf('name,formula\n'));
    expect(inflateSync(Buffer.from(text, 'base64url')).toString()).toBe('a.csv\nname,formula\n');
  });
  it('is read when made elsewhere', async () => {
    const text = deflateSync(Buffer.from('b.csv\nname,formula\n'), { level: 1 }).toString('base64url');
    expect(await unpacked(text)).toEqual({ name: 'b.csv', bytes: bytesOf('name,formula\n') });
  });
});

describe('a damaged link is refused', () => {
  it.each<[claim: string, change: (text: string) => string]>([
    ['empty', () => ''],
    ['cut off', (text) => text.slice(0, -5)],
    ['cut off after a few characters', (text) => text.slice(0, 7)],
    ['one character changed', (text) => `${text.slice(0, 40)}${text[40] === 'A' ? 'B' : 'A'}${text.slice(41)}`],
    ['with characters of no link', (text) => `${text.slice(0, 10)}%20${text.slice(10)}`],
    ['something else', () => 'numbers-heading'],
    ['no name in it', () => deflateSync('a.csv').toString('base64url')],
  ])('%s', async (_claim, change) => {
    const text = await packed(
      'small.csv',
      bytesOf('name,formula,unit\nprice,0.8,EUR\nheads,1000,1\nsales,price * heads,EUR\n'),
    );
    expect((await refusal(change(text)))?.code).toBe('link-damaged');
  });
});

describe('a link that is too large', () => {
  it('is not made, and the size is told', async () => {
    let state = 1;
    const noise = Uint8Array.from({ length: 30_000 }, () => {
      state = (Math.imul(state, 1_664_525) + 1_013_904_223) | 0;
      return state >>> 24;
    });
    const text = await packShared({ name: 'a.csv', bytes: noise });
    expect(text).toMatchObject({ problem: { code: 'link-too-long' } });
  });
  it('is not unpacked further than a file may be large', async () => {
    const bomb = deflateSync(Buffer.concat([Buffer.from('a.csv\n'), Buffer.alloc(50_000_000)])).toString('base64url');
    expect((await refusal(bomb))?.code).toBe('file-too-large');
  });
});

describe('a name from a link', () => {
  it.each([
    ['../../secret.csv', 'secret.csv'],
    ['C:\\farm\\hire.csv', 'hire.csv'],
    ['a\u202egpj.csv', 'agpj.csv'],
    ['<b>.csv', 'b.csv'],
    ['.hidden', 'model.csv'],
    ['', 'model.csv'],
    [`${'x'.repeat(200)}.csv`, 'x'.repeat(80)],
  ])('%j is taken as %j', async (name, safe) => {
    const text = deflateSync(Buffer.from(`${name}\nname,formula\n`)).toString('base64url');
    expect((await unpacked(text)).name).toBe(safe);
  });
});
