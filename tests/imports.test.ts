import { beforeAll, describe, expect, test } from 'vitest';
import { importBreaches } from './structure/imports';
import { withTree } from './structure/tree';

test('src keeps the law of imports', { timeout: 120_000 }, async () => expect(await importBreaches('.')).toEqual([]));

const refused: [path: string, text: string, reason: string][] = [
  ['src/core/a.ts', "import { live } from '../ui/app/live';", 'core may import language, shared'],
  ['src/core/b.ts', "import type { Cell } from '../model/cell';", 'core may import language, shared'],
  ['src/core/c.ts', "export { Cell } from '../model/cell';", 'core may import language, shared'],
  ['src/study/a.ts', "import { read } from '../files/csv';", 'study may import language, core, formula, model, shared'],
  ['src/ui/app/a.ts', "await import('../../cli/main');", 'ui/app may import'],
  ['src/ui/screens/beds/Beds.tsx', "import '../../../cli/main';", 'ui/screens may import'],
  ['src/present/text/a.ts', "import '../../ui/kit/a';", 'present may import'],
  ['src/ui/kit/b.ts', "import '../screens/beds/Year';", 'ui/kit may import'],
  ['src/ui/app/b.ts', "import '../kit/a';", 'ui/app may import'],
  ['src/jobs/a.ts', "import '../ui/app/live';", 'jobs may import'],
  ['src/model/a.ts', "let a: import('../ui/app/live').Live;", 'model may import language, core, formula, shared'],
  [
    'src/model/b.ts',
    "import raw from '../../models/farm.csv?raw';",
    'model may import language, core, formula, shared',
  ],
  ['src/main.ts', "import './cli/main';", 'main may import ui/frame'],
  ['src/ui/app/c.ts', "import '../../../tests/help';", 'ui/app may import'],
  ['src/ui/style/a.ts', "import '../../core/unit';", 'ui/style may import nothing'],

  ['src/ui/screens/beds/a.ts', "import '../timing/Timing';", 'no screen may import another'],
  ['src/ui/screens/beds/year/a.ts', "import type { A } from '../../timing/a';", 'no screen may import another'],

  ['src/core/d.ts', "import Decimal from 'decimal.js';", 'decimal.js may only be imported in src/core/number.ts'],
  ['src/model/c.ts', "import { parse } from 'mathjs/number';", 'only be imported in src/formula/mathParser.ts'],
  ['src/files/a.ts', "import { readFileSync } from 'node:fs';", 'only be imported in src/cli'],
  ['src/ui/app/d.ts', "import { openDB } from 'idb';", 'only be imported in src/ui/app/shelf/database.ts'],
  ['src/present/b.ts', "import type { JSX } from 'solid-js';", 'only be imported in src/ui/ and src/main.ts'],
  ['src/ui/app/e.ts', "import left from 'left-pad';", 'no door yet'],
];

const allowed: [path: string, text: string][] = [
  ['src/core/number.ts', "import Decimal from 'decimal.js';\nimport units from '../../shared/units.json';"],
  ['src/files/report.ts', "import { a } from '../model/a1';"],
  ['src/cli/files.ts', "import { readFileSync } from 'node:fs';"],
  ['src/ui/app/live.ts', "import { createSignal } from 'solid-js';\nimport raw from '../../../models/farm.csv?raw';"],
  ['src/ui/screens/beds/year/b.ts', "import '../part/c';\nimport '../../../kit/d';"],
  ['src/ui/frame/App.tsx', "import '../screens/beds/part/c';\nimport { a } from 'solid-js/web';"],
];

const circle: [path: string, text: string][] = [
  ['src/trade/about.ts', "import type { a } from './round';\nexport const b = 1;"],
  ['src/trade/round.ts', "import { b } from './about';\nexport const a = b;"],
];

describe('the law of imports', () => {
  let found: readonly string[] = [];
  beforeAll(async () => {
    const texts = new Map([...refused, ...allowed, ...circle].map(([path, text]) => [path, text]));
    found = await withTree(texts, importBreaches);
  }, 120_000);
  const about = (path: string) => found.filter((breach) => breach.startsWith(`${path}: `)).join('\n');

  test.each(refused)('refuses in %s: %s', (path, _text, reason) => expect(about(path)).toContain(reason));

  test.each(allowed)('allows in %s: %s', (path) => expect(about(path)).toBe(''));

  test('refuses a circle, even where one side imports only a type', () => {
    const circles = found.filter((breach) => breach.includes('in a circle'));
    expect(circles).toHaveLength(1);
    for (const [path] of circle) expect(circles[0]).toContain(path);
  });
});
