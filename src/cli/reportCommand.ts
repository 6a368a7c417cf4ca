import { spokenLanguage } from '../language/language';
import { wording } from '../language/wording';
import { problem, type Problem } from '../core/problem';
import type { LiveCase } from '../files/live/liveCase';
import { liveFile } from '../files/live/liveFile';
import type { OpenedModel } from '../files/readModel';
import { writeTable } from '../files/writeTable';
import { plainCase } from '../present/live/plainCase';
import { createDates } from '../present/text/dates';
import { createFormat } from '../present/text/numberFormat';
import { caseOf, type Case } from '../present/theCase/caseOf';
import { noCaseTexts } from '../present/theCase/noCaseTexts';
import { isoDate } from '../trade/civilDate';
import type { Arguments } from './arguments';
import { planOption, setOption, type CommandHelp } from './commandHelp';
import type { Machine } from './machine';
import { aligned, type Outcome } from './outcome';
import { valuesOfAll, type Session } from './session';
import { UsageError } from './usage';

export const reportHelp: CommandHelp = {
  name: 'report',
  takes: 'MODEL.csv',
  summary: wording`the case as one HTML file that works by itself`,
  gives: wording`Writes the case of going from one plan to another as one HTML file with the model inside. It opens in any browser, without a network, and whoever reads it can move the numbers. Every command reads such a file as it reads the model in it. Tells the file’s name and its size.`,
  options: [
    { name: 'out', value: 'CASE.html', does: wording`the file to write`, needed: true },
    { name: 'force', value: '', does: wording`put it in the place of a file that is there` },
    { name: 'against', value: 'NAME', does: wording`the plan to compare with; left out: the first other one` },
    planOption,
    setOption,
  ],
  example: 'report models/transplant-hire.csv --out case.html',
};

/** A model file that was read. */
export interface ReadFile {
  readonly path: string;
  readonly bytes: Uint8Array;
  readonly opened: OpenedModel;
}

const reasons: Readonly<Record<Exclude<Case['kind'], 'made'>, string>> = {
  'one plan': noCaseTexts.onePlan,
  'no marks': noCaseTexts.noMarks,
  units: noCaseTexts.mixedUnits,
};

/** The indices of the plan that is taken and of the one that is given up. */
function comparedIn({ model, plan, against }: Session): readonly [number, number | undefined] {
  const taken = model.plans.indexOf(plan);
  const first = model.plans.findIndex((_plan, p) => p !== taken);
  const given = against === undefined ? first : model.plans.indexOf(against);
  return [taken, given === -1 ? undefined : given];
}

function liveCaseOf(session: Session, { path, bytes, opened }: ReadFile, given: Arguments, day: number): LiveCase {
  const { model } = session;
  const [plan, against] = comparedIn(session);
  const changed = (): Uint8Array<ArrayBuffer> => new TextEncoder().encode(writeTable(opened.file, model.sheet));
  return {
    file: {
      name: path.split(/[/\\]/).at(-1) ?? path,
      bytes: given.set.length === 0 ? new Uint8Array(bytes) : changed(),
    },
    day: isoDate(day),
    plan: model.plans[plan]?.name ?? '',
    against: model.plans[against ?? -1]?.name ?? '',
    choices: {},
    address: '',
  };
}

/** Where the file is to be written, once nothing stands against it. */
function placeIn({ options, flags }: Arguments, { isThere }: Machine): string {
  const out = options['out'];
  if (out === undefined) throw new UsageError(wording`option missing: --out. Name the file to write.`);
  if (isThere(out) && !flags.has('force')) {
    throw new UsageError(wording`file is there already: ${out}. Name another one, or add --force.`);
  }
  return out;
}

function write({ writeFile }: Machine, out: string, text: string): Problem | undefined {
  try {
    writeFile(out, text);
    return undefined;
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return problem('not-written', wording`file not written: ${out} (${reason}). Write it to another place.`);
  }
}

function outcomeOf(document: Outcome['document'], table: string, computed: boolean, said?: Problem): Outcome {
  return { document, table, computed, ...(said !== undefined && { said: [said] }) };
}

/** No file was written. */
function without(out: string, said: Problem): Outcome {
  return outcomeOf({ file: out, bytes: null }, '', false, said);
}

/** The case as one HTML file with the model inside. */
export function reportCommand(session: Session, given: Arguments, read: ReadFile, machine: Machine): Outcome {
  const out = placeIn(given, machine);
  const { model } = session;
  const [plan, against] = comparedIn(session);
  const values = valuesOfAll(session);
  const made = caseOf(model, values, plan, against);
  if (made.kind !== 'made') return without(out, problem('no-case', reasons[made.kind]));
  const page = machine.livePage();
  if (page === undefined) {
    return without(out, problem('no-page', wording`page of a live case not built: run npm run build:command.`));
  }
  const format = createFormat(spokenLanguage()?.tag ?? 'en');
  const day = machine.today();
  const about = { model, values, plan, against: against ?? plan, words: '', prepared: '' };
  const texts = plainCase({ ...about, day: createDates(format.locale).long(day) }, format);
  const text = liveFile(page, texts, liveCaseOf(session, read, given, day));
  if (typeof text !== 'string') return without(out, text.problem);
  const fault = write(machine, out, text);
  if (fault !== undefined) return without(out, fault);
  const bytes = new TextEncoder().encode(text).length;
  const table = aligned([[out, wording`${Math.ceil(bytes / 1000)} kB`]], []);
  return outcomeOf({ file: out, bytes }, table, !made.netChange.isNaN());
}
