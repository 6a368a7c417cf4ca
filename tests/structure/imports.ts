import { cruise, type ICruiseResult, type IForbiddenRuleType } from 'dependency-cruiser';

const ENGINE = ['language', 'core', 'formula', 'model', 'trade', 'study', 'files'];
const DIRECTION =
  'language <- core <- formula <- model <- { trade, study, files } <- present <- { cli, jobs, ui } <- main; ' +
  'inside ui: app <- kit <- screens <- { frame, live }';

/** What each folder of src may import, itself apart. The folders that hold data are in this table as well. */
export const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  language: [],
  core: ['language', 'shared'],
  formula: ['language', 'core', 'shared'],
  model: ['language', 'core', 'formula', 'shared'],
  trade: ['language', 'core', 'formula', 'model', 'shared'],
  study: ['language', 'core', 'formula', 'model', 'shared'],
  files: ['language', 'core', 'formula', 'model', 'shared'],
  present: [...ENGINE, 'shared'],
  jobs: [...ENGINE, 'present', 'shared'],
  cli: [...ENGINE, 'present', 'shared', 'models', 'package.json'],
  'ui/app': [...ENGINE, 'present', 'jobs', 'shared', 'models'],
  'ui/kit': [...ENGINE, 'present', 'jobs', 'ui/app', 'shared'],
  'ui/screens': [...ENGINE, 'present', 'jobs', 'ui/app', 'ui/kit', 'shared', 'models'],
  'ui/frame': [...ENGINE, 'present', 'jobs', 'ui/app', 'ui/kit', 'ui/screens', 'ui/style', 'shared'],
  'ui/live': [...ENGINE, 'present', 'jobs', 'ui/app', 'ui/kit', 'ui/screens', 'ui/style'],
  'ui/style': [],
  main: ['ui/frame', 'ui/app', 'ui/style'],
};

/** Where each outside library may be imported: by one file, or by a folder if it comes in many parts. */
const DOORS: Readonly<Record<string, string>> = {
  'decimal.js': 'src/core/number.ts',
  mathjs: 'src/formula/mathParser.ts',
  papaparse: 'src/files/csv.ts',
  'intl-messageformat': 'src/language/catalogue.ts',
  'chart.js': 'src/ui/kit/charts/lines.ts',
  '@dagrejs/dagre': 'src/present/together/layout.ts',
  idb: 'src/ui/app/shelf/database.ts',
  'solid-js': 'src/ui/ and src/main.ts',
  '@fontsource-variable': 'src/ui/frame/start.tsx',
};

const escaped = (text: string) => text.replaceAll('.', '\\.');

/** Matches the files of a part: "^src/core/", "^src/main\.ts$", "^shared/", "^package\.json$". */
const filesOf = (part: string) =>
  part.endsWith('.json')
    ? `^${escaped(part)}$`
    : part === 'main'
      ? '^src/main\\.ts$'
      : part in MAY_IMPORT
        ? `^src/${part}/`
        : `^${part}/`;

/** Matches a library where it is installed, and by its bare name where it is not. */
const library = (name: string) => `(^|/node_modules/)${escaped(name)}(/|$)`;

const direction = Object.entries(MAY_IMPORT).map(([part, allowed]): IForbiddenRuleType => ({
  name: `direction-of-${part}`,
  comment: `${part} may import ${allowed.join(', ') || 'nothing'}. Imports go one way: ${DIRECTION}.`,
  severity: 'error',
  from: { path: filesOf(part) },
  to: { dependencyTypes: ['local'], pathNot: [part, ...allowed].map(filesOf) },
}));

const doors = Object.entries(DOORS).map(([name, door]): IForbiddenRuleType => ({
  name: `door-of-${name}`,
  comment: `${name} may only be imported in ${door}: whoever wants to change the library finds all of it there.`,
  severity: 'error',
  from: { pathNot: door.split(' and ').map((path) => `^${escaped(path)}`) },
  to: { path: library(name) },
}));

const forbidden: IForbiddenRuleType[] = [
  {
    name: 'no-cycles',
    comment:
      'files that import each other in a circle can only be understood and moved together: put what both need in a ' +
      'third file. A type counts as well.',
    severity: 'error',
    from: {},
    to: { circular: true },
  },
  {
    name: 'no-sibling-screens',
    comment:
      'no screen may import another, so that each can change alone: what both need belongs in ui/kit or present.',
    severity: 'error',
    from: { path: '^src/ui/screens/([^/]+)/' },
    to: { path: '^src/ui/screens/', pathNot: '^src/ui/screens/$1/' },
  },
  {
    name: 'machine-only-in-cli',
    comment: 'Node may only be imported in src/cli: all else runs in a browser.',
    severity: 'error',
    from: { pathNot: '^src/cli/' },
    to: { dependencyTypes: ['core'] },
  },
  {
    name: 'door-for-each-library',
    comment: 'this library has no door yet: name in tests/structure/imports.ts the one file that may import it.',
    severity: 'error',
    from: {},
    to: { dependencyTypesNot: ['local', 'core'], pathNot: Object.keys(DOORS).map(library) },
  },
  ...direction,
  ...doors,
];

/**
 * Every import of src that breaks the law, type imports included, as "src/core/a.ts: src/ui/b.ts: reason".
 * @param root the folder that holds src
 */
export async function importBreaches(root: string): Promise<string[]> {
  const { output } = await cruise(
    ['src'],
    {
      baseDir: root,
      validate: true,
      ruleSet: { forbidden },
      tsPreCompilationDeps: true,
      doNotFollow: { path: 'node_modules' },
    },
    { exportsFields: ['exports'], conditionNames: ['import', 'browser', 'default'] },
  );
  const { violations } = (output as ICruiseResult).summary;
  const reasons = new Map(forbidden.map(({ name, comment }) => [name, comment]));
  return violations.map(({ from, to, rule, cycle }) => {
    const way = cycle?.map(({ name }) => name).join(' -> ') ?? to;
    return `${from}: ${way}: ${reasons.get(rule.name) ?? rule.name}`;
  });
}
