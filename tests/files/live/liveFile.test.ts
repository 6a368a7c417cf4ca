import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { liveCaseIn, liveFile, liveLimit } from '../../../src/files/live/liveFile';
import type { LiveCase } from '../../../src/files/live/liveCase';

const page = '<!doctype html><title><!--title--></title><div><!--text--></div><!--case--><script>start()</script>';
const texts = { title: 'A &amp; B', text: '<p>costs $& and $1</p>' };

function liveWith(bytes: Uint8Array<ArrayBuffer>, name = 'farm.csv'): LiveCase {
  return { file: { name, bytes }, day: '2031-03-09', plan: 'B', against: 'A', choices: {}, address: '' };
}

function made(live: LiveCase): string {
  const text = liveFile(page, texts, live);
  if (typeof text !== 'string') throw new Error(text.problem.message);
  return text;
}

const bytesOf = (text: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(text);
const models = readdirSync('models').filter((name) => name.endsWith('.csv'));

describe('a live file', () => {
  it.each(models)('gives %s out again byte for byte', (name) => {
    const bytes = new Uint8Array(readFileSync(`models/${name}`));
    expect(liveCaseIn(bytesOf(made(liveWith(bytes, name))))).toMatchObject({ file: { name, bytes } });
  });

  it('has its title and text where the page wants them, signs and all', () => {
    const text = made(liveWith(bytesOf('name\n')));
    expect(text).toContain('<title>A &amp; B</title><div><p>costs $& and $1</p></div>');
    expect(text).not.toContain('<!--');
  });

  it('is refused once it is too large, with what helps', () => {
    const found = liveFile(page, texts, liveWith(new Uint8Array(liveLimit)));
    expect(found).toMatchObject({ problem: { code: 'live-case-too-large' } });
    expect(found).toMatchObject({
      problem: { message: expect.stringMatching(/at most 600\. Send the model/) as string },
    });
  });

  it('cut off anywhere gives its model or says that it is not whole', () => {
    const bytes = bytesOf('name,formula\nx,1\n');
    const whole = bytesOf(made(liveWith(bytes)));
    const told = Array.from(whole, (_byte, end) => {
      const found = liveCaseIn(whole.subarray(0, end));
      if (found === undefined) return 'no page';
      return 'problem' in found ? found.problem.code : 'whole';
    });
    expect(new Set(told)).toEqual(new Set(['no page', 'no-live-case', 'live-case-damaged', 'whole']));
    // Once the model is whole, no later cut harms it.
    expect(new Set(told.slice(told.indexOf('whole')))).toEqual(new Set(['whole']));
  });

  it.each(['name,formula\nx,1\n', '', '<x', 'x<!doctype html>'])('is not seen in %j', (text) => {
    expect(liveCaseIn(bytesOf(text))).toBeUndefined();
  });

  it('is not seen in any other page, which is told', () => {
    expect(liveCaseIn(bytesOf('<!DOCTYPE HTML><p>News'))).toMatchObject({ problem: { code: 'no-live-case' } });
  });
});
