import { expect, it } from 'vitest';
import { learningFound } from '../../../src/present/timing/learning';
import { mostRunRows, runPicture, runTable } from '../../../src/present/timing/runPicture';
import { english, only, timing } from './trials';

const ink = { planA: 'blue', text: 'black', quiet: 'grey', paper: 'white' } as never;
const picture = (text: string) => runPicture(learningFound(only(text), timing()), ink, 600, english);

it('the run is a line over the plants done, with the curve where something was learned', () => {
  const { lines, x } = picture('1 300; 1 240; 1 210.6; 1 192; 1 178.7');
  expect(lines).toHaveLength(2);
  expect(lines[0]!.points.map(({ x: at }) => at)).toEqual([1, 2, 3, 4, 5]);
  expect(x.max).toBe(5);
  expect(lines[1]!.points.at(-1)!.y).toBeCloseTo(178.7, 0);
});

it('there is no curve where none shows', () => expect(picture('10 120; 10 110; 10 130; 10 120').lines).toHaveLength(1));

it('a batch that was left out does not stretch the picture', () => {
  const text = 'step,plants,seconds,left_out\nm,1,10,\nm,1,900,rain\nm,1,11,\n';
  expect(picture(text).y.max).toBeLessThan(12);
});

it('batches that agree have heights to draw in', () => {
  const { y } = picture('10 120; 10 120; 10 120');
  expect(y.max).toBeGreaterThan(y.min);
});

it('10,000 batches are drawn, and tabled as far as one would read', () => {
  const text = Array.from({ length: 10_000 }, (_, i) => `10 ${100 + (i % 7)}`).join('; ');
  const before = process.cpuUsage();
  const found = learningFound(only(text), timing());
  const drawn = runPicture(found, ink, 600, english);
  expect(drawn.lines[0]!.points).toHaveLength(10_000);
  expect(runTable(found, english).rows).toHaveLength(mostRunRows);
  expect(process.cpuUsage(before).user / 1e6).toBeLessThan(20);
});
