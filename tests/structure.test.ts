import { describe, expect, test } from 'vitest';
import { engineFaults } from './structure/engineTypes';
import { breaches, everyTestRuns, hasItsFolder, namesTooAlike, noBarrels, noClockNoChance } from './structure/rules';
import { filesIn, readFolder, readSource } from './structure/source';

const src = readFolder('src');
const tests = readFolder('tests');

describe('in src', () => {
  test('there is something to look at', () => expect(src).not.toEqual([]));

  test.each([
    ['each file is in a folder of the layout', hasItsFolder],
    ['nothing below cli, jobs and ui reads the clock or chance', noClockNoChance],
    ['no file only passes on', noBarrels],
  ])('%s', (_claim, rule) => expect(breaches(src, rule)).toEqual([]));
});

test.each(['src', 'tests', 'models', 'shared'])('names in %s differ in more than case and ending', (folder) =>
  expect(namesTooAlike(filesIn(folder))).toEqual([]),
);

test('every test runs', () => expect(breaches(tests, everyTestRuns)).toEqual([]));

describe('a breach is reported:', () => {
  const found = (rule: Parameters<typeof breaches>[1], path: string, text: string) =>
    breaches([readSource(path, text)], rule).join('\n');

  test.each(['new Date()', 'new Date', 'Date()', 'Date.now()', 'Math.random()'])('clock or chance: %s', (text) => {
    for (const path of ['src/study/rng.ts', 'src/present/text/dates.ts'])
      expect(found(noClockNoChance, path, text)).toContain('Pass it in.');
  });

  test('names alike', () => {
    expect(namesTooAlike(['src/a/Beds.tsx', 'src/a/beds.css', 'src/b/beds.ts']).join()).toContain(
      'Beds.tsx and src/a/beds.css',
    );
    expect(namesTooAlike(['src/a/Beds.tsx', 'src/a/bed.css'])).toEqual([]);
  });

  test('folder', () => expect(found(hasItsFolder, 'src/utils/text.ts', 'x;')).toContain('no such part'));

  test.each(["export { a } from './a';", "export * from './a';\nexport const b = 1;"])('barrel: %s', (text) =>
    expect(found(noBarrels, 'src/core/index.ts', text)).not.toBe(''),
  );

  test.each(["test.skip('x', f)", "describe.only('x', f)", "test.describe.fixme('x')", "test('x', { skip: true }, f)"])(
    'test that does not run: %s',
    (text) => expect(found(everyTestRuns, 'tests/a.test.ts', text)).toContain('mend the test'),
  );
});

describe('what is allowed stays silent:', () => {
  test.each([
    ['src/core/number.ts', "import Decimal from 'decimal.js';\nimport units from '../../shared/units.json';"],
    ['src/files/report.ts', "// document, Date\nimport { a } from '../model/a';\nexport const b = a.window + 'fetch';"],
    ['src/present/text/dates.ts', 'export const day = (at: number) => new Date(at);'],
    ['src/trade/calendar.ts', 'export const today = { window: 1 };\nexport const half = Math.round(0.5);'],
    ['src/ui/app/live.ts', "import { createSignal } from 'solid-js';\nexport const now = () => new Date();"],
    [
      'src/main.ts',
      "import { render } from 'solid-js/web';\nimport { App } from './ui/frame/App';\nrender(App, document);",
    ],
  ])('%s', (path, text) => {
    const rules = [hasItsFolder, noClockNoChance, noBarrels];
    expect(rules.flatMap((rule) => breaches([readSource(path, text)], rule))).toEqual([]);
  });
});

describe('the compiler refuses in the engine', () => {
  const outside = [
    'document.title',
    'window.name',
    'localStorage.length',
    'navigator.language',
    'performance.now()',
    'crypto.randomUUID()',
    'process.env',
    'globalThis.document',
    "fetch('x')",
    'setTimeout(() => 1)',
    'setInterval(() => 1)',
    "import 'node:fs'",
    "console.log('x')",
  ];
  const folders = ['core', 'formula', 'model', 'trade', 'study', 'files', 'present'];
  const pathOf = (at: number) => `src/${folders[at % folders.length]!}/breach${at}.ts`;
  const plain = 'src/core/plain.ts';
  const texts = new Map(outside.map((text, at) => [pathOf(at), `${text};\nexport {};`]));
  const faults = engineFaults(texts.set(plain, 'export const twice = (a: number[]) => a.toSorted();'));

  test.each(outside.map((text, at) => [text, pathOf(at)]))('%s', (_text, path) =>
    expect(faults.get(path)?.join()).toMatch(/Cannot find|no index signature/),
  );

  test('and lets the language itself pass', () => expect(faults.get(plain)).toEqual([]));
});
