import { describe, expect, it } from 'vitest';
import { runCommand } from '../../src/cli/run';
import { machineWith } from './machine';

const farm = `name,unit,formula,crop,plan: Today,plan: Nursery
bed,board,798,boards,,
every,day,1,interval,,
young,day,10,stage 1 time,0,
crowded,plant/board,60,stage 1 density,,
kept_young,%,98.4375,stage 1 survival,100,
grown,day,14,stage 2 time,24,
wide,plant/board,21,stage 2 density,,
`;

interface Document {
  readonly boards: string | null;
  readonly interval_days: string | null;
  readonly balanced: { readonly finished_per_week: string | null; readonly boards: readonly (string | null)[] };
  readonly whole: Readonly<Record<'batch' | 'finished_per_week' | 'boards_used' | 'boards_free' | 'stages', unknown>>;
  readonly bottleneck: readonly number[] | null;
  readonly faults: readonly { readonly code: string }[];
}

function run(file: string, words = '--json') {
  const bytes = new TextEncoder().encode(file);
  const { output, messages, status } = runCommand(
    ['schedule', 'farm.csv', ...words.split(' ')],
    machineWith(() => bytes),
  );
  return { output, messages, status, document: (output.startsWith('{') ? JSON.parse(output) : {}) as Document };
}

describe('schedule', () => {
  // The pond of Rutgers Horticultural Engineering, Lettuce Production; see tests/reference/balancedStages.test.ts.
  // 790 boards would finish 6,615 a week, so 798 balanced ones 6,615 × 798/790 = 6,681.987….
  it('gives balanced stages and whole boards', () => {
    const { document, status } = run(farm);
    expect(status).toBe(0);
    expect(document).toEqual({
      boards: '798',
      interval_days: '1',
      balanced: {
        finished_per_week: expect.stringMatching(/^6681\.987341772151898734\d+$/) as string,
        boards: [expect.stringMatching(/^161\.6\d+$/) as string, expect.stringMatching(/^636\.3\d+$/) as string],
      },
      whole: {
        batch: 960,
        finished_per_week: '6615',
        boards_used: 790,
        boards_free: 8,
        stages: [
          { time_days: '10', density: '60', survival: '0.984375', started: 960, boards_each: 16, boards: 160 },
          { time_days: '14', density: '21', survival: '1', started: 945, boards_each: 45, boards: 630 },
        ],
      },
      bottleneck: null,
      faults: [],
    });
    expect(document.balanced.boards.reduce((sum, boards) => sum + Number(boards), 0)).toBeCloseTo(798, 10);
  });

  it('a skipped stage has no boards', () => {
    const { document } = run(farm, '--plan Today --json');
    expect(document.balanced.boards).toEqual(['0', '798']);
    // 24 batches on 33 boards each are 792; 33 × 21 = 693 plants.
    expect(document.whole).toMatchObject({ batch: 693, boards_used: 792, boards_free: 6 });
  });

  it('takes a setting', () => {
    expect(run(farm, '--set every=2 --json').document.interval_days).toBe('2');
  });

  it('names the bottleneck where boards are set by hand', () => {
    const byHand = `${farm}set_young,board,300,stage 1 boards,,\nset_wide,board,498,stage 2 boards,,\n`;
    expect(run(byHand).document.bottleneck).toEqual([2]);
  });

  it('the turnaround counts into each stage', () => {
    const shorter = farm.replace('young,day,10', 'young,day,9').replace('grown,day,14', 'grown,day,13');
    const { whole } = run(`${shorter}wash,day,1,turnaround,,\n`).document;
    expect(whole).toMatchObject({ batch: 960, boards_used: 790 });
  });

  it('tells people the same', () => {
    const { output } = run(farm, '--plan Nursery');
    expect(output).toMatch(/stage 1 +10 +60 +161\.6\d+ +160\n/);
    expect(output).toMatch(/batch on whole boards +960\n/);
  });

  it.each([
    ['a density of 0', 'crowded,plant/board,60', 'crowded,plant/board,0'],
    ['a time below 0', 'young,day,10', 'young,day,-10'],
    ['a survival above 100 %', 'kept_young,%,98.4375', 'kept_young,%,120'],
  ])('%s gives nulls and status 1', (_fault, from, to) => {
    const { document, status } = run(farm.replace(from, to));
    expect(status).toBe(1);
    expect(document.balanced.finished_per_week).toBeNull();
    expect(document.whole).toMatchObject({
      batch: null,
      finished_per_week: null,
      boards_used: null,
      boards_free: null,
    });
  });

  it('an interval of 0 leaves the balanced stages', () => {
    const { document, status } = run(farm.replace('every,day,1', 'every,day,0'));
    expect(status).toBe(1);
    expect(document.balanced.finished_per_week).toMatch(/^6681\.987/);
    expect(document.whole).toMatchObject({ batch: null });
  });

  it('a missing density is a fault of the file, and null', () => {
    const { document, status, messages } = run(farm.replace(',stage 2 density', ','));
    expect(status).toBe(1);
    expect(messages).toContain('stage 2 density is missing');
    expect(document.faults.map(({ code }) => code)).toContain('crop-missing');
    expect(document.whole).toMatchObject({ batch: null });
  });

  it('fewer boards than one batch needs: a batch of 0', () => {
    const { document, status } = run(farm.replace('bed,board,798', 'bed,board,20'));
    expect(status).toBe(0);
    expect(document.whole).toMatchObject({ batch: 0, finished_per_week: '0', boards_used: 0, boards_free: 20 });
  });

  it('a million boards', () => {
    expect(run(farm.replace('bed,board,798', 'bed,board,1000000')).status).toBe(0);
  });

  it('is of one plan, and of a model with a crop', () => {
    const against = run(farm, '--against Today');
    expect(against).toMatchObject({ status: 2, output: '' });
    expect(against.messages).toContain('option not for schedule: --against.');
    const bare = run('name,formula\na,1\n');
    expect(bare.status).toBe(2);
    expect(Object.keys(bare.document)).toEqual(['faults']);
  });

  it.each([
    ['a density of a unit with a fault', 'wide,plant/board,21', 'wide,plnt/bord,21'],
    ['a time of the clock', 'grown,day,14', 'grown,h,14'],
    ['a density of other plants', 'wide,plant/board,21', 'wide,board,21'],
    ['no time in a stage', 'stage 2 time', ''],
  ])('%s leaves unknown what hangs on it', (_claim, from, to) => {
    const { document, status } = run(farm.replace(from, to));
    expect(status).toBe(1);
    expect(document.balanced).toEqual({ finished_per_week: null, boards: [null, null] });
    expect(document.whole).toMatchObject({
      batch: null,
      finished_per_week: null,
      boards_used: null,
      boards_free: null,
    });
    const [first] = document.whole.stages as readonly unknown[];
    expect(first).toMatchObject({ density: '60', started: null, boards_each: null, boards: null });
  });

  it('tags that make no stage are told with what is known', () => {
    const { document, status } = run(farm.replaceAll(/stage \d/g, 'stagge'));
    expect(status).toBe(1);
    expect(document).toMatchObject({ boards: '798', interval_days: '1', balanced: { boards: [] }, bottleneck: null });
    expect(document.faults.map(({ code }) => code)).toContain('crop-unknown');
  });
});
