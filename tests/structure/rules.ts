import { posix } from 'node:path';
import type { Source } from './source';

/** One rule: the reasons why a file breaks it, none where it does not. */
type Rule = (source: Source) => string[];

const ENGINE = ['core', 'formula', 'model', 'trade', 'study', 'files'];
const DIRECTION =
  'core <- formula <- model <- { trade, study, files } <- present <- { cli, jobs, ui } <- main; ' +
  'inside ui: app <- kit <- screens <- frame';

/** What each folder may import, itself apart. The folders that hold data are in this table as well. */
const MAY_IMPORT: Record<string, string[]> = {
  core: ['shared'],
  formula: ['core', 'shared'],
  model: ['core', 'formula', 'shared'],
  trade: ['core', 'formula', 'model', 'shared'],
  study: ['core', 'formula', 'model', 'shared'],
  files: ['core', 'formula', 'model', 'shared'],
  present: [...ENGINE, 'shared'],
  jobs: [...ENGINE, 'present', 'shared'],
  cli: [...ENGINE, 'present', 'shared', 'models'],
  'ui/app': [...ENGINE, 'present', 'jobs', 'shared', 'models'],
  'ui/kit': [...ENGINE, 'present', 'jobs', 'ui/app', 'shared'],
  'ui/screens': [...ENGINE, 'present', 'jobs', 'ui/app', 'ui/kit', 'shared', 'models'],
  'ui/frame': [...ENGINE, 'present', 'jobs', 'ui/app', 'ui/kit', 'ui/screens', 'shared'],
  'ui/style': [],
  main: ['ui/frame', 'ui/app', 'ui/style'],
};

/** The one file that may import each outside library, and the folders for those that come in many parts. */
const DOORS: [library: RegExp, door: RegExp, says: string][] = [
  [/^decimal\.js(\/|$)/, /^src\/core\/number\.ts$/, 'src/core/number.ts'],
  [/^mathjs(\/|$)/, /^src\/formula\/parse\.ts$/, 'src/formula/parse.ts'],
  [/^papaparse$/, /^src\/files\/csv\.ts$/, 'src/files/csv.ts'],
  [/^chart\.js(\/|$)/, /^src\/ui\/kit\/charts\/lines\.ts$/, 'src/ui/kit/charts/lines.ts'],
  [/^idb-keyval$/, /^src\/ui\/app\/[^.]+\.ts$/, 'one file of src/ui/app'],
  [/^solid-js(\/|$)/, /^src\/(main\.tsx$|ui\/)/, 'src/ui and src/main.tsx'],
  [/^@fontsource/, /^src\/(main\.tsx$|ui\/)/, 'src/ui and src/main.tsx'],
  [/^node:/, /^src\/cli\//, 'src/cli'],
];

/** Ways to read the clock or chance that are part of the language, so that no compiler can refuse them. */
const CLOCK_AND_CHANCE = ['new Date()', 'Date()', 'Date.now', 'Math.random'];

const NOT_RUN = /\.(skip|skipIf|runIf|todo|only|fixme|fails|fail)$/;
const LONGEST = 300;

/** "core" for src/core/unit.ts, "ui/kit" for src/ui/kit/x.ts, "main" for src/main.tsx, "models" for models/x.csv. */
function folderOf(path: string): string {
  const [top = '', below = '', inside = ''] = path.split('/');
  if (top !== 'src') return top;
  return below === 'ui' ? `ui/${inside}` : below.replace(/\.tsx?$/, '');
}

/** "beds" for src/ui/screens/beds/x.ts; blank elsewhere. */
const screenOf = (path: string): string => /^src\/ui\/screens\/([^/]+)\//.exec(path)?.[1] ?? '';

const isRelative = (name: string) => name.startsWith('.') || name.startsWith('/');
const isPlain = ({ path }: Source) => path.startsWith('src/') && [...ENGINE, 'present'].includes(folderOf(path));

export const hasItsFolder: Rule = ({ path }) =>
  Object.hasOwn(MAY_IMPORT, folderOf(path))
    ? []
    : [`no such part of the program: ${folderOf(path)}. There are ${Object.keys(MAY_IMPORT).join(', ')}.`];

export const importsGoOneWay: Rule = ({ path, imports }) => {
  const from = folderOf(path);
  const allowed = MAY_IMPORT[from] ?? [];
  return imports
    .filter(isRelative)
    .map((name) => folderOf(posix.join(posix.dirname(path), name)))
    .filter((to) => to !== from && !allowed.includes(to))
    .map((to) => `${from} may not import ${to}. Imports go one way: ${DIRECTION}; trade, study and files do not meet.`);
};

export const noSiblingScreens: Rule = ({ path, imports }) => {
  const own = screenOf(path);
  if (own === '') return [];
  return imports
    .filter(isRelative)
    .map((name) => screenOf(posix.join(posix.dirname(path), name)))
    .filter((other) => other !== '' && other !== own)
    .map(
      (other) => `the screen ${own} may not import the screen ${other}: what both need belongs in ui/kit or present.`,
    );
};

export const librariesHaveOneDoor: Rule = ({ path, imports }) =>
  imports
    .filter((name) => !isRelative(name))
    .flatMap((name) => {
      const [, door, says] = DOORS.find(([library]) => library.test(name)) ?? [];
      if (says === undefined) return [`${name} has no door yet: name one in tests/structure/rules.ts.`];
      return door?.test(path) ? [] : [`${name} may only be imported in ${says}.`];
    });

/** What else the engine must not know, a page or the machine, the compiler refuses: see tsconfig.engine.json. */
export const noClockNoChance: Rule = (source) => {
  if (!isPlain(source)) return [];
  const used = CLOCK_AND_CHANCE.filter((name) => source.names.has(name) || source.members.has(name));
  return used.map(
    (name) => `${name} gives another answer each time: the same model must give the same result. Pass it in.`,
  );
};

export const filesAreShort: Rule = ({ lines }) =>
  lines > LONGEST ? [`${lines} lines, more than ${LONGEST}: make it two files of one concept each.`] : [];

export const noBarrels: Rule = ({ onlyPassesOn, passesOnAll }) =>
  onlyPassesOn || passesOnAll
    ? ['a file that passes on what others export hides where things are: import from the file itself.']
    : [];

/** For tests: each one runs, and all of them do. */
export const everyTestRuns: Rule = ({ members, keys }) =>
  [
    ...[...members].filter((member) => NOT_RUN.test(member)),
    ...['skip', 'todo', 'only', 'fails'].filter((key) => keys.has(key)),
  ].map((name) => `${name} keeps a test from running or from counting: mend the test or remove it.`);

/** One line for each breach: "src/core/unit.ts: reason". */
export const breaches = (sources: Source[], rule: Rule): string[] =>
  sources.flatMap((source) => rule(source).map((reason) => `${source.path}: ${reason}`));

/** Libraries with a single door that two files share all the same. */
export function sharedDoors(sources: Source[]): string[] {
  const importers = (library: string) => sources.filter(({ imports }) => imports.includes(library));
  return ['idb-keyval']
    .filter((library) => importers(library).length > 1)
    .map(
      (library) =>
        `${library} has more than one door: ${importers(library)
          .map(({ path }) => path)
          .join(', ')}`,
    );
}

/**
 * Names in one folder that are the same but for case and ending: they are one file on a disk that ignores case, or
 * one module to an import without its ending.
 */
export function namesTooAlike(paths: string[]): string[] {
  const alike = new Map<string, string[]>();
  for (const path of paths) {
    const stem = path.replace(/\.[a-z]+$/, '').toLowerCase();
    alike.set(stem, [...(alike.get(stem) ?? []), path]);
  }
  return [...alike.values()]
    .filter(({ length }) => length > 1)
    .map((same) => `${same.join(' and ')} differ in nothing but case and ending: give one of them another name.`);
}
