import { expect, it } from 'vitest';
import { timed } from './timedRun';

const lost = `step,plants,seconds,lost
moving,50,90,1
moving,50,90,3
moving,50,90,
washing,4,80,
`;

it('counts in the batches whose losses were counted, in per cent', () => {
  const { documents } = timed(lost, '--show losses --json');
  expect(documents).toMatchObject([{ step: 'moving', batches: 2, plants: 100, lost: 4, share: '4' }]);
  expect(timed(lost, '--show losses').output).toMatch(/^moving +2 +100 +4 +4 +1\.56/m);
});

it('says what to do where nobody counted', () => {
  expect(timed('step,plants,seconds\nmoving,1,2\n', '--show losses').output).toContain('in the column lost');
});
