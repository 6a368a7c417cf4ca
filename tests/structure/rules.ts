import { MAY_IMPORT } from './imports';
import type { Source } from './source';

/** One rule: the reasons why a file breaks it, none where it does not. */
type Rule = (source: Source) => string[];

/** The folders that give the same result for the same model, whenever and wherever they run. */
const PLAIN = ['language', 'core', 'formula', 'model', 'trade', 'study', 'files', 'present'];

/** Ways to read the clock or chance that are part of the language, so that no compiler can refuse them. */
const CLOCK_AND_CHANCE = ['new Date()', 'Date()', 'Date.now', 'Math.random'];

const NOT_RUN = /\.(skip|skipIf|runIf|todo|only|fixme|fails|fail)$/;

/** "core" for src/core/unit.ts, "ui/kit" for src/ui/kit/x.ts, "main" for src/main.ts, "models" for models/x.csv. */
function folderOf(path: string): string {
  const [top = '', below = '', inside = ''] = path.split('/');
  if (top !== 'src') return top;
  return below === 'ui' ? `ui/${inside}` : below.replace(/\.tsx?$/, '');
}

const isPlain = ({ path }: Source) => path.startsWith('src/') && PLAIN.includes(folderOf(path));

export const hasItsFolder: Rule = ({ path }) =>
  Object.hasOwn(MAY_IMPORT, folderOf(path))
    ? []
    : [`no such part of the program: ${folderOf(path)}. There are ${Object.keys(MAY_IMPORT).join(', ')}.`];

/** What else the engine must not know, a page or the machine, the compiler refuses: see tsconfig.engine.json. */
export const noClockNoChance: Rule = (source) => {
  if (!isPlain(source)) return [];
  const used = CLOCK_AND_CHANCE.filter((name) => source.names.has(name) || source.members.has(name));
  return used.map(
    (name) => `${name} gives another answer each time: the same model must give the same result. Pass it in.`,
  );
};

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
