// @vitest-environment jsdom
import { createRoot, createSignal } from 'solid-js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Question } from '../../../../../src/model/response';
import { resultQuestion } from '../../../../../src/ui/app/store/resultQuestion';
import { pause } from '../../../../../src/ui/app/jobs/pause';
import { createModelStore } from '../../../../../src/ui/app/store/modelStore';
import { createTornado, type ShownTornado } from '../../../../../src/ui/screens/whatMatters/tornado/shownTornado';
import { idOf, nursery } from '../../../../present/nursery';

const count = 30;
const xs = Array.from({ length: count }, (_, k) => `x${k}`);
const text = [
  'name,formula,low,high',
  ...xs.map((x, k) => `${x},5,1,${6 + k}`),
  `r,${xs.join(' + ')},,`,
  'q,x0 * x1,,',
  '',
].join('\n');

interface Watched {
  readonly tornado: () => ShownTornado;
  readonly ask: (question: Question) => void;
  /** Milliseconds that each look at the clock takes from now on. */
  readonly slow: (ms: number) => void;
}

/** A tornado of a question that can be changed, on a clock that stands still while it is not slow. */
function watch(question: Question): Watched {
  return createRoot(() => {
    let [time, each] = [0, 0];
    vi.spyOn(performance, 'now').mockImplementation(() => (time += each));
    const [ask, setAsk] = createSignal(question);
    const tornado = createTornado(ask);
    return { tornado, ask: setAsk, slow: (ms) => (each = ms) };
  });
}

/** Questions before and after an edit of the second input, and one for another result. */
function edited(table = text): { before: Question; after: Question; other: Question } {
  const { model, origin } = nursery(table);
  const store = createModelStore(model, origin);
  const ask = (name: string): Question => resultQuestion(store, store.model().cells[idOf(model, name)]!, 0, undefined)!;
  const before = ask('r');
  store.edit({ row: 3, column: 'formula', text: '3' });
  return { before, after: ask('r'), other: ask('q') };
}

const ofFirst = ({ bars }: ShownTornado): string | undefined =>
  bars.find(({ lever }) => lever.cell.name === 'x0')?.atLow.toString();

describe('a tornado that is shown', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => {
    vi.restoreAllMocks();
    vi.useRealTimers();
  });

  it('is whole in the turn in which it is asked for, and exact a pause later', () => {
    const { before } = edited();
    const { tornado } = watch(before);
    expect(tornado()).toMatchObject({ share: 1, exact: false });
    expect(tornado().bars).toHaveLength(count);
    vi.advanceTimersByTime(pause - 1);
    expect(tornado().exact).toBe(false);
    vi.runAllTimers();
    expect(tornado()).toMatchObject({ share: 1, exact: true });
  });

  it('follows an edit in the same turn', () => {
    const { before, after } = edited();
    const { tornado, ask } = watch(before);
    expect(ofFirst(tornado())).toBe('146');
    ask(after);
    expect(tornado().share).toBe(1);
    expect(ofFirst(tornado())).toBe('144');
  });

  it('on a busy machine starts with what there is, and the rest follows without a pause', () => {
    const { before, other } = edited();
    const { tornado, ask, slow } = watch(before);
    slow(10);
    ask(other);
    expect(tornado().share).toBeGreaterThan(0);
    expect(tornado().share).toBeLessThan(1);
    vi.advanceTimersByTime(count);
    expect(tornado()).toMatchObject({ share: 1, exact: false });
  });

  it('on a busy machine stands as it was until the new one is whole', () => {
    const { before, after } = edited();
    const { tornado, ask, slow } = watch(before);
    const whole = tornado();
    slow(10);
    ask(after);
    expect(tornado()).toBe(whole);
    vi.advanceTimersByTime(count);
    expect(tornado()).not.toBe(whole);
    expect(tornado()).toMatchObject({ share: 1, exact: false });
    expect(ofFirst(tornado())).toBe('144');
    vi.advanceTimersByTime(2 * pause);
    expect(tornado().exact).toBe(true);
  });

  it('is whole in the same turn where one step looks at all, however busy the machine', () => {
    const { before, after } = edited('name,formula,low,high\na,2,1,3\nb,5,4,6\nr,a * b,,\nq,a,,\n');
    const { tornado, ask, slow } = watch(before);
    const whole = tornado();
    slow(10);
    ask(after);
    expect(tornado()).not.toBe(whole);
    expect(tornado()).toMatchObject({ share: 1, exact: false });
  });

  it('that takes longer than a pause says how far it is', () => {
    const { before, after } = edited();
    const { tornado, ask, slow } = watch(before);
    slow(pause);
    ask(after);
    expect(tornado().share).toBe(1);
    vi.advanceTimersToNextTimer();
    expect(tornado().share).toBeGreaterThan(0);
    expect(tornado().share).toBeLessThan(1);
  });
});
