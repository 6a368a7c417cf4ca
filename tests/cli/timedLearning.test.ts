import { expect, it } from 'vitest';
import { timed } from './timedRun';

// A halves with each doubling, and B never learns; together they show neither.
const workers = `step,plants,seconds,worker
moving,1,100,A
moving,1,50,B
moving,1,50,A
moving,1,50,B
moving,1,33.333333333333333,A
moving,1,50,B
washing,4,80,
`;

it('follows all together and each worker, who counts their own plants', () => {
  const { documents } = timed(workers, '--show learning --after 4 --json');
  expect(documents.map(({ step, worker, plants }) => [step, worker, plants])).toEqual([
    ['moving', null, 6],
    ['moving', 'A', 3],
    ['moving', 'B', 3],
    ['washing', null, 4],
  ]);
  const [, a, b, washing] = documents;
  expect(Number(a!['rate'])).toBeCloseTo(50, 0);
  expect(a!['learning']).toBe(true);
  expect(b).toMatchObject({ rate: '100', learning: false, after: 4 });
  expect(Number(b!['seconds_after'])).toBeCloseTo(50, 9);
  expect(washing).toMatchObject({ batches: null, rate: null, learning: null, seconds_after: null });
});

it('is an aligned table for people', () => {
  expect(timed(workers, '--show learning --after 4').output).toMatch(
    /^moving +B +3 +50 +100 +100 +100 +none shows +50/m,
  );
  expect(timed(workers, '--show learning').output).toMatch(/^washing +all together +4 +— /m);
});

it.each([
  ['--show learning --after 0', '--after not a whole number from 1'],
  ['--after 5', '--after without --show learning.'],
  ['--show speed', '--show not known: speed. Use times, ways, learning, losses, odd.'],
  ['--show toString', '--show not known: toString.'],
])('%s is wrong usage', (words, message) => {
  const { status, messages } = timed(workers, words);
  expect(status).toBe(2);
  expect(messages).toContain(message);
});
