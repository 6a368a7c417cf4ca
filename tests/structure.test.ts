import { describe, expect, test } from 'vitest';
import {
  breaches,
  engineIsAlone,
  everyTestRuns,
  filesAreShort,
  hasItsFolder,
  importsGoOneWay,
  librariesHaveOneDoor,
  noBarrels,
  sharedDoors,
} from './structure/rules';
import { readFolder, readSource } from './structure/source';

const src = readFolder('src');
const tests = readFolder('tests');

describe('in src', () => {
  test('there is something to look at', () => expect(src).not.toEqual([]));

  test.each([
    ['each file is in a folder of the layout', hasItsFolder],
    ['imports go one way', importsGoOneWay],
    ['each library is imported at its door', librariesHaveOneDoor],
    ['nothing below cli, jobs and ui knows a page, a clock or chance', engineIsAlone],
    ['files are short', filesAreShort],
    ['no file only passes on', noBarrels],
  ])('%s', (_claim, rule) => expect(breaches(src, rule)).toEqual([]));

  test('no library has two doors', () => expect(sharedDoors(src)).toEqual([]));
});

test('every test runs', () => expect(breaches(tests, everyTestRuns)).toEqual([]));

describe('a breach is reported:', () => {
  const found = (rule: Parameters<typeof breaches>[1], path: string, text: string) =>
    breaches([readSource(path, text)], rule).join('\n');

  test.each([
    ['src/core/unit.ts', "import { live } from '../ui/live';", 'core may not import ui'],
    ['src/core/unit.ts', "import type { Cell } from '../model/cell';", 'core may not import model'],
    ['src/core/unit.ts', "export { Cell } from '../model/cell';", 'core may not import model'],
    ['src/study/grid.ts', "import { read } from '../files/csv';", 'study may not import files'],
    ['src/ui/live.ts', "await import('../cli/main');", 'ui may not import cli'],
    ['src/ui/beds/Beds.tsx', "import '../../cli/main';", 'ui may not import cli'],
    ['src/model/plan.ts', "let a: import('../ui/live').Live;", 'model may not import ui'],
    ['src/model/plan.ts', "import raw from '../../models/farm.csv?raw';", 'model may not import models'],
    ['src/files/csv.ts', "import { formulaHelp } from '../present/help';", 'files may not import present'],
    ['src/present/help.ts', "import { live } from '../ui/live';", 'present may not import ui'],
    ['src/present/help.ts', "import { ask } from '../jobs/ask';", 'present may not import jobs'],
    ['src/jobs/ask.ts', "import { live } from '../ui/live';", 'jobs may not import ui'],
    ['src/main.tsx', "import './cli/main';", 'main may not import cli'],
    ['src/ui/live.ts', "import '../../tests/help';", 'ui may not import tests'],
  ])('direction, %s: %s', (path, text, reason) => expect(found(importsGoOneWay, path, text)).toContain(reason));

  test.each([
    ['src/core/unit.ts', "import Decimal from 'decimal.js';", 'decimal.js may only be imported in src/core/number.ts'],
    ['src/model/graph.ts', "import { parse } from 'mathjs/number';", 'only be imported in src/formula/parse.ts'],
    ['src/files/csv.ts', "import { readFileSync } from 'node:fs';", 'only be imported in src/cli'],
    ['src/ui/live.ts', "import left from 'left-pad';", 'left-pad has no door yet'],
  ])('door, %s: %s', (path, text, reason) => expect(found(librariesHaveOneDoor, path, text)).toContain(reason));

  test.each(['new Date()', 'Math.random()', 'document.title', 'const x = window', 'process.env', 'fetch(x)'])(
    'outside world: %s',
    (text) => expect(found(engineIsAlone, 'src/study/rng.ts', text)).toContain('Pass it in.'),
  );

  test('outside world, in sentences', () =>
    expect(found(engineIsAlone, 'src/present/told.ts', 'new Date()')).toContain('Pass it in.'));

  test('folder', () => expect(found(hasItsFolder, 'src/utils/text.ts', 'x;')).toContain('no such part'));

  test('length', () => expect(found(filesAreShort, 'src/a.ts', 'x;\n'.repeat(301))).toContain('301 lines'));

  test.each(["export { a } from './a';", "export * from './a';\nexport const b = 1;"])('barrel: %s', (text) =>
    expect(found(noBarrels, 'src/core/index.ts', text)).not.toBe(''),
  );

  test('two doors', () => {
    const store = "import { get } from 'idb-keyval';";
    const two = [readSource('src/ui/save.ts', store), readSource('src/ui/load.ts', store)];
    expect(sharedDoors(two).join()).toContain('src/ui/save.ts, src/ui/load.ts');
  });

  test.each(["test.skip('x', f)", "describe.only('x', f)", "test.describe.fixme('x')", "test('x', { skip: true }, f)"])(
    'test that does not run: %s',
    (text) => expect(found(everyTestRuns, 'tests/a.test.ts', text)).toContain('mend the test'),
  );
});

describe('what is allowed stays silent:', () => {
  test.each([
    ['src/core/number.ts', "import Decimal from 'decimal.js';\nimport units from '../../shared/units.json';"],
    ['src/files/report.ts', "// document, Date\nimport { a } from '../model/a';\nexport const b = a.window + 'fetch';"],
    ['src/trade/calendar.ts', 'export const today = { window: 1 };\nexport const half = Math.round(0.5);'],
    ['src/cli/help.ts', "import { help } from '../present/help';\nimport { version } from '../../package.json';"],
    ['src/ui/live.ts', "import { createSignal } from 'solid-js';\nexport const now = () => new Date();"],
    ['src/main.tsx', "import { render } from 'solid-js/web';\nimport { App } from './ui/App';\nrender(App, document);"],
  ])('%s', (path, text) => {
    const rules = [hasItsFolder, importsGoOneWay, librariesHaveOneDoor, engineIsAlone, filesAreShort, noBarrels];
    expect(rules.flatMap((rule) => breaches([readSource(path, text)], rule))).toEqual([]);
  });
});
