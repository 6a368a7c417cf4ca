import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Machine } from '../../src/cli/machine';
import type { Finished } from '../../src/cli/outcome';
import { runCommand } from '../../src/cli/run';
import { liveCaseIn } from '../../src/files/live/liveFile';
import { machineWith } from './machine';

const hire = 'models/transplant-hire.csv';
const page = '<!doctype html><title><!--title--></title><div><!--text--></div><!--case-->';

/** Runs a report on a machine that keeps what is written. */
function report(words: readonly string[], more: Partial<Machine> = {}): Finished & { written: Map<string, string> } {
  const written = new Map<string, string>();
  const machine = machineWith((path) => readFileSync(path), {
    livePage: () => page,
    writeFile: (path, text) => void written.set(path, text),
    isThere: (path) => path === 'there.html',
    ...more,
  });
  return { ...runCommand(['report', ...words], machine), written };
}

const bytesOf = (text = ''): Uint8Array => new TextEncoder().encode(text);

describe('report', () => {
  it('writes a file from which every command takes the model again', () => {
    const { output, messages, status, written } = report([hire, '--out', 'case.html']);
    expect([output, messages, status]).toEqual([expect.stringMatching(/^case\.html {2}\d+ kB\n$/), '', 0]);
    const html = written.get('case.html');
    expect(liveCaseIn(bytesOf(html))).toMatchObject({
      file: { name: 'transplant-hire.csv', bytes: new Uint8Array(readFileSync(hire)) },
      day: '2031-03-09',
      plan: 'Nursery first',
      against: 'Straight to finishing',
    });
    const evaluate = (file: Uint8Array): Finished =>
      runCommand(
        ['evaluate', 'x', '--json'],
        machineWith(() => file),
      );
    expect(evaluate(bytesOf(html))).toEqual(evaluate(readFileSync(hire)));
  });

  it('says its file and size as data', () => {
    const { output, status, written } = report([hire, '--out', 'case.html', '--json']);
    expect(status).toBe(0);
    expect(JSON.parse(output)).toEqual({
      file: 'case.html',
      bytes: bytesOf(written.get('case.html')).length,
      faults: [],
    });
  });

  it('has a set number in the model, and the chosen plans', () => {
    const words = [hire, '--out', 'c.html', '--set', 'wage=16', '--plan', 'Straight to finishing'];
    const found = liveCaseIn(bytesOf(report(words).written.get('c.html')));
    if (found === undefined || 'problem' in found) throw new Error('no case');
    expect(found).toMatchObject({ plan: 'Straight to finishing', against: 'Nursery first' });
    expect(new TextDecoder().decode(found.file.bytes)).toMatch(/\nwage,[^\n]*,16,/);
  });

  it('puts nothing in the place of a file unless told to', () => {
    const refused = report([hire, '--out', 'there.html']);
    expect([refused.status, refused.written.size]).toEqual([2, 0]);
    expect(refused.messages).toMatch(/^file is there already: there\.html\. Name another one, or add --force\./);
    expect(report([hire, '--out', 'there.html', '--force'])).toMatchObject({ status: 0 });
  });

  it.each([
    ['no name for the file', [hire], 2, /^option missing: --out\./],
    ['a value behind --force', [hire, '--out', 'x', '--force=1'], 2, /^option without a value: --force\./],
    ['--force elsewhere', ['check', hire], 2, /./],
    ['a model without a budget', ['models/density-lesson.csv', '--out', 'x'], 1, /No entry of this model is marked/],
  ])('says what is wrong: %s', (_what, words, status, message) => {
    const found = report(words);
    expect(found.status).toBe(status);
    expect(found.messages).toMatch(message);
    expect(found.written.size).toBe(0);
  });

  it('says why nothing was written', () => {
    const writeFile = (): never => {
      throw new Error('ENOSPC: no space left on device');
    };
    const full = report([hire, '--out', 'x', '--json'], { writeFile });
    expect(full.status).toBe(1);
    expect(full.messages).toMatch(/file not written: x \(ENOSPC.*\)\. Write it to another place\./);
    expect(JSON.parse(full.output)).toMatchObject({ file: 'x', bytes: null });
    expect(report([hire, '--out', 'x'], { livePage: () => undefined }).messages).toMatch(/npm run build:command/);
  });
});

describe('a live file at any command', () => {
  it('that is damaged is told, as one document where that is wanted', () => {
    const cut = bytesOf('<!doctype html><script type="application/json" id="live-case">{"format":1,"mo');
    const found = runCommand(
      ['evaluate', 'case.html', '--json'],
      machineWith(() => cut),
    );
    expect(found.status).toBe(1);
    expect(JSON.parse(found.output)).toMatchObject({ faults: [{ code: 'live-case-damaged' }] });
    expect(found.messages).toMatch(/damaged file: the model in it is not whole/);
  });
});
