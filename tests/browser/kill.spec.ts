import { spawnSync } from 'node:child_process';
import { expect, test } from '@playwright/test';

test('a browser that is killed loses nothing typed more than 100 ms before, tears no record, and undo goes on', () => {
  // Room for a slow machine: what is timed are the losses.
  test.setTimeout(300_000);
  // The rounds read the disk with the app's own code, which this runner's loader cannot take in.
  const args = ['tsx', 'tests/kill/run.ts', '--rounds', '6', '--seed', '1'];
  const { status, stdout, stderr } = spawnSync('npx', args, { encoding: 'utf8' });
  console.log(stdout);
  expect(stderr).toBe('');
  expect(status, stdout).toBe(0);
  const typed = [...stdout.matchAll(/, (\d+) typed,/g)].map(([, count]) => Number(count));
  expect(typed).toHaveLength(6);
  expect(stdout.split('a step undone').length - 1).toBeGreaterThan(2);
  expect(typed.reduce((sum, count) => sum + count, 0)).toBeGreaterThan(20);
});
