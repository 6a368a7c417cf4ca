import { spawnSync } from 'node:child_process';
import { closeSync, mkdtempSync, openSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '../..');

const inEnglish = { ...process.env, LC_ALL: 'C' };

function run(words: readonly string[], output: number | 'pipe' = 'pipe') {
  const program = ['node_modules/tsx/dist/cli.mjs', 'src/cli/main.ts', ...words];
  return spawnSync(process.execPath, program, {
    cwd: root,
    env: inEnglish,
    stdio: ['ignore', output, 'pipe'],
    encoding: 'utf8',
  });
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

describe('the built program', { timeout: 120_000 }, () => {
  const built = join(root, '.cache/command-test');
  const elsewhere = mkdtempSync(join(tmpdir(), 'elsewhere-'));

  beforeAll(async () => {
    await build({
      root,
      configFile: join(root, 'vite.command.config.ts'),
      logLevel: 'error',
      build: { outDir: built },
    });
  }, 120_000);
  afterAll(() => {
    rmSync(built, { recursive: true });
    rmSync(elsewhere, { recursive: true });
  });

  function runBuilt(words: readonly string[], environment: Readonly<Record<string, string>> = {}) {
    return spawnSync(process.execPath, [join(built, 'raftmargin.js'), ...words], {
      cwd: elsewhere,
      env: { ...inEnglish, ...environment },
      encoding: 'utf8',
    });
  }

  it('runs from any folder, under its own name', () => {
    expect(readFileSync(join(built, 'raftmargin.js'), 'utf8')).toMatch(/^#!\/usr\/bin\/env node\n/);
    expect(runBuilt(['--help']).stdout).toMatch(/^usage: raftmargin COMMAND FILE/);
  });

  it('speaks the language of its environment, and English to programs', () => {
    const spanish = { LC_ALL: 'es_MX.UTF-8' };
    const model = join(root, 'models/transplant-hire.csv');
    expect(runBuilt(['guess'], spanish).stderr).toMatch(/^comando desconocido: guess\./);
    expect(runBuilt(['check', model], spanish).stdout).toMatch(/^115 datos, 2 planes, 0 errores\n/);
    expect(runBuilt(['check', model, '--json'], spanish).stdout).toBe(runBuilt(['check', model, '--json']).stdout);
    expect(runBuilt(['guess', '--json'], spanish).stdout).toBe(runBuilt(['guess', '--json']).stdout);
  });

  it('writes a case in Spanish, with its page', () => {
    const model = join(root, 'models/transplant-hire.csv');
    const made = runBuilt(['report', model, '--out', 'caso.html'], { LC_ALL: 'es_ES.UTF-8' });
    expect(made).toMatchObject({ status: 0, stderr: '' });
    const html = readFileSync(join(elsewhere, 'caso.html'), 'utf8');
    expect(html).toMatch(/^<!doctype html>\n<html lang="es">\n/);
    expect(html).toContain('Presupuesto parcial');
    expect(html.length).toBeLessThanOrEqual(600_000);
  });

  it('writes the case of a model into the folder in which it is started', () => {
    const model = join(root, 'models/transplant-hire.csv');
    expect(runBuilt(['report', model, '--out', 'case.html'])).toMatchObject({ status: 0, stderr: '' });
    const html = readFileSync(join(elsewhere, 'case.html'), 'utf8');
    expect(html).toMatch(
      /^<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n<meta http-equiv="Content-Sec/,
    );
    expect(html).toContain('Nursery first in place of Straight to finishing adds');
    expect(html.length).toBeLessThanOrEqual(600_000);
    expect(runBuilt(['check', 'case.html']).stdout).toMatch(/^115 entries, 2 plans, 0 faults\n/);
  });
});
