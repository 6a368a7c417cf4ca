import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { textOf } from '../../../src/present/text/phrase';
import {
  afterSentence,
  allWorkers,
  learnerName,
  learnedTime,
  learningFound,
  learningSentence,
  orderText,
  plantsDone,
  type LearningFound,
} from '../../../src/present/timing/learning';
import { english, only, read, study, timing } from './trials';

const found = (text: string): LearningFound => learningFound(only(text), timing());
const told = (text: string): string => read(textOf(learningSentence(found(text), timing(), english)));
/** Units at 80 % from 300 s, as published: 300, 240, 210.6, 192, 178.7. */
const learned = '1 300; 1 240; 1 210.6; 1 192; 1 178.7';

describe('learning', () => {
  it('is told by the share that each doubling leaves', () =>
    expect(told(learned)).toBe(
      'Moving gets quicker: each doubling of the plants done brings the seconds to 80 %, between 80 % and 80 % at 95 % confidence.',
    ));

  it('is said plainly not to show', () =>
    expect(told('10 120; 10 110; 10 130; 10 120')).toMatch(
      /^No learning shows in 4 batches of moving: with each doubling the seconds come to \d+ %, between \d+ % and \d+ % at 95 % confidence, which has 100 % in it\.$/,
    ));

  it('of batches that agree is none', () => expect(told('10 120; 10 120; 10 120')).toContain('all took the same'));

  it('backwards is told too', () => expect(told('1 10; 1 12; 1 13.3; 1 14.4')).toContain('the seconds rise to'));

  it('needs three batches', () =>
    expect(told('10 120; 10 100')).toBe(
      'Time three batches of moving or more: then it shows whether the work gets quicker.',
    ));

  it('gives the seconds after so many plants, and says where the batches end', () => {
    const at = found(learned);
    const after = (plants: number): string => read(textOf(afterSentence(at, at.curve!, decimal(plants), english)));
    expect(after(4)).toMatch(/^After 4 plants: 192\.\d+ s each, between [\d.]+ and [\d.]+\.$/);
    expect(after(16)).toMatch(/^After 16 plants: 122\.\d+ s each/);
    expect(after(16)).toContain('The batches reach to 5 plants; beyond that the curve is only drawn on');
    expect(plantsDone(at)).toBe(5);
  });

  it('is told by worker where the file tells several apart, the one with the most batches first', () => {
    // A halves with each doubling, B never learns.
    const rows = [
      ['A', 100],
      ['B', 50],
      ['A', 50],
      ['B', 50],
      ['A', 100 / 3],
      ['B', 50],
      ['B', 50],
    ];
    const file = ['step,plants,seconds,worker', ...rows.map(([worker, s]) => `moving,1,${s},${worker}`), ''].join('\n');
    const [step] = study(file);
    const of = (kept?: string): LearningFound => learningFound(step!, timing(), kept);
    const said = (kept?: string): string => read(textOf(learningSentence(of(kept), timing(), english)));
    expect(of().workers).toEqual(['A', 'B']);
    expect(said()).toContain('No learning shows in 4 batches of moving by B: all took the same');
    expect(said('A')).toContain(
      'Moving by A gets quicker: each doubling of the plants done brings the seconds to 50 %',
    );
    expect(plantsDone(of('A'))).toBe(3);
    const a = of('A');
    expect(read(textOf(afterSentence(a, a.curve!, decimal(2), english)))).toContain('After 2 plants of A’s own: 50');
    expect(learnerName(a)).toBe('moving by A');
    expect(of('gone').worker).toBe('B');
    expect(of(allWorkers)).toMatchObject({ worker: '', workers: ['A', 'B'] });
    expect(read(textOf(orderText(of(allWorkers))))).toContain('People are mixed here: each learns by themselves.');
    expect(read(textOf(orderText(a)))).not.toContain('mixed');
  });

  it('of one worker, or of nobody named, is that of the step', () => {
    const file = 'step,plants,seconds,worker\nmoving,1,9,A\nmoving,1,8,A\nmoving,1,7,A\n';
    expect(learningFound(study(file)[0]!, timing())).toMatchObject({ workers: [], worker: '' });
  });

  it('goes into the model as a time with a range', () => {
    const { curve } = found('1 10; 1 8.2; 1 7; 1 6.5; 1 6.2');
    const { secondsPerPlant, spread, batches } = learnedTime(curve!, decimal(8));
    expect(batches).toBe(5);
    expect(spread!.interval[0].lt(secondsPerPlant) && spread!.interval[1].gt(secondsPerPlant)).toBe(true);
  });
});

it('says in which order batches are, and that ways are mixed', () => {
  const order = (text: string): string => textOf(orderText(found(text)));
  expect(order('step,plants,seconds,date\nm,1,1,2031-03-03\nm,1,1,2031-03-04\n')).toContain('order of their days');
  expect(order('step,plants,seconds,date\nm,1,1,2031-03-03\nm,1,1,\n')).toContain('order of the file');
  expect(order('step,plants,seconds,way\nm,1,1,a\nm,1,1,b\n')).toContain('different ways are mixed');
});
