import { expect, it } from 'vitest';
import { timed } from './timedRun';

const row = (seconds: number, way: string): string => `moving,1,${seconds},${way}`;
const odd = ['step,plants,seconds,way', ...[10, 11, 10.5, 9.5, 10, 30].map((s) => row(s, 'bed')), row(99, 'bench'), ''];

it('names the rows that lie far off, each among those of its way', () => {
  const { documents, status } = timed(odd.join('\n'), '--show odd --json');
  expect(status).toBe(0);
  expect(documents).toMatchObject([{ step: 'moving', way: 'bed', row: 7, seconds_per_plant: '30', median: '10.25' }]);
  expect(timed(odd.join('\n'), '--show odd').output).toMatch(/^moving +bed +7 +30 +10\.25 /m);
});

it('says so where there is none', () => {
  expect(timed('step,plants,seconds\nmoving,1,2\n', '--show odd').output).toContain('no batch lies far');
});
