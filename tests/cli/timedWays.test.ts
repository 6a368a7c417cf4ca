import { expect, it } from 'vitest';
import { timed } from './timedRun';

const ways = `step,plants,seconds,way
moving,10,100,bed
moving,10,104,bed
moving,10,80,bench
moving,10,82,bench
moving,10,90,knee
washing,4,80,
`;

it('compares every two ways of a step, the quicker one second', () => {
  const { status, documents } = timed(ways, '--show ways --json');
  expect(status).toBe(0);
  expect(documents.map(({ slow, quick }) => [slow, quick].map((way) => (way as { way: string }).way))).toEqual([
    ['bed', 'bench'],
    ['bed', 'knee'],
    ['knee', 'bench'],
  ]);
  // Means 10.2 and 8.1, standard errors 0.2 and 0.1: the root of 0.05, and 0.05² ÷ (0.04² + 0.01²) = 1.47 freedom.
  expect(documents[0]).toMatchObject({
    step: 'moving',
    saved: '2.1',
    standard_error: '0.2236067977499789696409173668731276',
    settled: true,
  });
  expect(Number(documents[0]!['freedom'])).toBeCloseTo(1.470588, 5);
  expect(documents[1]).toMatchObject({ saved: '1.2', ci: null, settled: null, batches_each: null });
});

it('is an aligned table for people, and says what to do where there are no ways', () => {
  const { output } = timed(ways, '--show ways');
  expect(output).toMatch(/^moving +bed +10\.2 +bench +8\.1 +2\.1 /m);
  expect(output).toContain('Welch’s 95 % confidence interval');
  expect(timed('step,plants,seconds\nmoving,1,2\n', '--show ways').output).toContain('in the column way');
});
