import { writeTable } from '../../src/files/writeTable';
import { reopen } from '../../src/ui/app/shelf/changes';
import { carriedOn } from '../../src/ui/app/shelf/lastMoment';
import { isOwnWork, isShelfFile, isShelfWork, type ShelfFile, type ShelfWork } from '../../src/ui/app/shelf/record';
import { readSteps } from '../../src/ui/app/shelf/steps/readSteps';
import { sheetSum } from '../../src/ui/app/shelf/steps/sheetSum';
import { stepBetween } from '../../src/ui/app/shelf/steps/sheetStep';
import { isStepRecord } from '../../src/ui/app/shelf/steps/stepRecord';
import type { Chance } from '../kill/chance';
import { damaged, oneOf, type FuzzKind } from './kind';

const text = 'name,label,formula,note\n,A farm,,\na,First,1,\nb,Second,a * 2,why\n';
const bytes = new TextEncoder().encode(text);

const file: ShelfFile = { version: 2, id: 'one', name: 'farm.csv', shipped: '', opened: 5, bytes };
const work: ShelfWork = {
  version: 3,
  id: 'one',
  name: 'farm.csv',
  title: 'A farm',
  shipped: '',
  size: bytes.length,
  isCopy: false,
  changes: [[3, 'formula', '7']],
  layout: { columns: ['name', 'label', 'formula', 'note'], rows: [2, 4, 3] },
  drafts: [[4, 'formula', 'a *']],
  choice: { result: 'b', 'setting case why': 'so' },
  steps: { at: 1, sum: 0 },
  at: 9,
};
const before = reopen(file, { changes: [] }).model.sheet;
const now = reopen(file, work).model.sheet;
const record = { version: 1, id: 'one', number: 1, step: stepBetween(before, now) };

const strange: readonly unknown[] = [
  ...[null, undefined, 0, -1, 1e300, NaN, 2 ** 53, 1.5, '', 'x', '__proto__', true, [], {}, [[]], [null]],
  ...[[[1, 'a', 'b']], [[3, 'formula', '1']], { at: 1 }, new Uint8Array(3), 'x'.repeat(500), [2, 2, 2], [1e300]],
];

type Plain = Record<string, unknown> | unknown[];

const isPlain = (value: unknown): value is Plain =>
  typeof value === 'object' && value !== null && !(value instanceof Uint8Array);

/** A value in which some part, at any depth, is another one, is gone or is new. */
function damagedValue(chance: Chance, value: unknown): unknown {
  const copy = structuredClone(value);
  for (let times = chance.whole(1, 4); times > 0; times -= 1) {
    let at = copy;
    for (let depth = chance.whole(0, 4); depth >= 0 && isPlain(at); depth -= 1) {
      const keys = Object.keys(at);
      const key = keys.length === 0 || chance.whole(0, 12) === 0 ? 'version' : oneOf(chance, keys);
      const parts = at as Record<string, unknown>;
      if (depth === 0 || !isPlain(parts[key])) {
        if (chance.whole(0, 4) === 0) Reflect.deleteProperty(parts, key);
        else parts[key] = structuredClone(oneOf(chance, strange));
      }
      at = parts[key];
    }
  }
  return chance.whole(0, 40) === 0 ? oneOf(chance, strange) : copy;
}

/** As the page's memory holds it, text in which some characters may be others. */
function damagedText(chance: Chance): string {
  const whole = JSON.stringify({ ...work, at: 99 });
  return chance.whole(0, 2) === 0 ? damaged(chance, whole) : JSON.stringify(damagedValue(chance, work));
}

function recordCase(chance: Chance): string {
  const [oldFile, oldWork] = [damagedValue(chance, file), damagedValue(chance, work)];
  const taken = carriedOn(work, damagedText(chance));
  if (!isShelfWork(taken)) return 'the page’s memory gives what is no work';
  const usableFile = isShelfFile(oldFile) ? oldFile : file;
  const usableWork = isShelfWork(oldWork) ? oldWork : taken;
  isOwnWork(usableWork);
  const { model, origin } = reopen(usableFile, usableWork);
  const written = writeTable(origin.file, model.sheet);
  if (typeof written !== 'string') return 'nothing to save';
  const step = damagedValue(chance, record);
  isStepRecord(step);
  const mark = damagedValue(chance, { at: 1, sum: sheetSum(now), waiting: [record] });
  const trail = readSteps([step, record], mark, now, before);
  const count = (trail?.past.length ?? 0) + (trail?.future.length ?? 0);
  return count > 4 ? `${count} steps out of two records` : '';
}

export const records: FuzzKind = { name: 'shelf records', share: 16, run: recordCase };
