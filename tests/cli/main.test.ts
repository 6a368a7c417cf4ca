import { spawnSync } from 'node:child_process';
import { closeSync, openSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '../..');

function run(words: readonly string[], output: number | 'pipe' = 'pipe') {
  const program = ['node_modules/tsx/dist/cli.mjs', 'src/cli/main.ts', ...words];
  return spawnSync(process.execPath, program, { cwd: root, stdio: ['ignore', output, 'pipe'], encoding: 'utf8' });
}

describe('the program', { timeout: 120_000 }, () => {
  it('prints a result on standard output', () => {
    const { stdout, stderr, status } = run(['--version']);
    expect([stdout, stderr, status]).toEqual([expect.stringMatching(/^\d+\.\d+\.\d+\n$/), '', 0]);
  });

  it('prints what is wrong on standard error', () => {
    const { stdout, stderr, status } = run(['guess', 'farm.csv']);
    expect([stdout, status]).toEqual(['', 2]);
    expect(stderr).toMatch(/^command not known: guess\./);
  });

  it('says in one line that its output cannot be written', () => {
    const readOnly = openSync(join(root, 'package.json'), 'r');
    const { stderr, status } = run(['check', 'models/transplant-hire.csv'], readOnly);
    closeSync(readOnly);
    expect(stderr).toMatch(/^output not written: \w+: .*\. Write it to another place\.\n$/);
    expect(status).toBe(1);
  });
});
