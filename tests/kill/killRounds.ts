import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { fieldOf } from '../browser/page';
import { startBrowser } from './browserProcess';
import { chanceOf } from './chance';
import { plays, type TypedPage } from './rounds';
import { watchStalls } from './stalls';
import { readShelf, type ShelfOnDisk } from './shelfOnDisk';

/** Milliseconds before the kill: what was typed earlier must be on the disk. */
const promised = 100;

/** What one round found. */
export interface RoundResult {
  readonly play: string;
  /** Keys, and titles, that the pages had taken. */
  readonly typed: number;
  /** Milliseconds between the oldest thing lost and the kill; 0 where nothing was lost. */
  readonly lost: number;
  /** Whether the newest model had a step that undo took back after the kill. */
  readonly undone: boolean;
  /** How long the machine kept this program waiting around the kill; what is promised is late by as much. */
  readonly stalled: number;
  /** Whether the browser had thrown its database away, and the program put the models back. */
  readonly putBack: boolean;
  readonly faults: readonly string[];
}

/** What is wrong with what one page had typed, and how old the oldest lost part of it is. */
function compared(
  { name, typed }: TypedPage,
  { models }: ShelfOnDisk,
  killed: number,
  stalled: number,
): [lost: number, fault: string] {
  const [last] = typed.slice(-1);
  if (last === undefined) return [0, ''];
  const found = models.get(name);
  const kinds = [...new Set(typed.map(({ what }) => what))];
  const lostOf = kinds.map((kind) => {
    const those = typed.filter(({ what }) => what === kind);
    const kept = those.findLastIndex(({ text }) => text === found?.[kind]);
    const firstLost = those[kept + 1];
    return firstLost === undefined || (kind === 'title' && found === undefined) ? 0 : killed - firstLost.at;
  });
  const lost = Math.max(...lostOf);
  const fault = lost > promised + stalled ? `${name}: typed ${lost} ms before the kill and lost` : '';
  return [lost, fault];
}

/** Takes back the last kept step in the app, and compares with what the disk says of it. */
async function undone(page: Page, { before }: NonNullable<ShelfOnDisk['newest']>): Promise<string[]> {
  if (before === undefined) return [];
  const undo = page.getByRole('button', { name: 'Undo', exact: true });
  await page.locator('.steps [aria-disabled="false"]', { hasText: 'Undo' }).waitFor();
  await undo.click();
  const wage = (await fieldOf(page, 'Wage').inputValue()).replaceAll(',', '');
  const title = await page.getByRole('heading', { level: 1 }).textContent();
  if (wage !== before.wage) return [`undo leads to the wage ${wage} and not ${before.wage}`];
  return title?.includes(before.title.replace(/\.csv$/, '')) === true ? [] : [`undo leads to the title ${title}`];
}

async function appShows(
  context: Parameters<typeof readShelf>[0],
  address: string,
  { newest }: ShelfOnDisk,
): Promise<string[]> {
  const page = await context.newPage();
  await page.goto(address);
  await page.getByRole('heading', { name: 'Numbers', exact: true }).waitFor({ state: 'attached' });
  const failed = await page.getByText(/^Not kept on this machine( yet)?:/).count();
  const shown = await fieldOf(page, 'Wage').inputValue();
  const wrong = newest === undefined ? [] : await undone(page, newest);
  await page.close();
  return failed > 0 || shown === '' ? ['the app does not open what was kept', ...wrong] : wrong;
}

/** Models of earlier rounds that are no longer there; those that are there are added to them. */
function gone(known: Set<string>, { models }: ShelfOnDisk): string[] {
  const missing = [...known].filter((name) => !models.has(name));
  for (const name of models.keys()) known.add(name);
  return missing.map((name) => `${name}: the model is gone`);
}

/**
 * Kills the browser at random moments of work and looks at what is on the disk.
 * @param address of the built site
 * @param told is called after each round
 */
export async function killRounds(
  { rounds, seed }: { readonly rounds: number; readonly seed: number },
  address: string,
  told: (result: RoundResult) => void = () => undefined,
): Promise<RoundResult[]> {
  const profile = mkdtempSync(join(tmpdir(), 'kill-'));
  const results: RoundResult[] = [];
  const chance = chanceOf(seed);
  const stalls = watchStalls();
  const known = new Set<string>();
  try {
    for (let round = 1; round <= rounds; round += 1) {
      const [play, run] = plays[(round - 1) % plays.length]!;
      const { context, kill } = await startBrowser(profile);
      const pages = await run({ context, address, chance, name: `farm ${round}` });
      const stalled = stalls.longest(300);
      const killed = await kill();
      const again = await startBrowser(profile);
      const onDisk = await readShelf(again.context, address);
      const faults = [...onDisk.faults, ...(await appShows(again.context, address, onDisk))];
      // What the browser itself has lost is back once the program was opened.
      const after = await readShelf(again.context, address);
      faults.push(...gone(known, after));
      await again.kill();
      const each = pages.map((page) => compared(page, onDisk.isLost ? after : onDisk, killed, stalled));
      faults.push(...each.flatMap(([, fault]) => (fault === '' ? [] : fault)));
      const typed = pages.reduce((sum, page) => sum + page.typed.length, 0);
      const hasStep = onDisk.newest?.before !== undefined;
      const lost = Math.max(0, ...each.map(([one]) => one));
      const result = { play, typed, lost, undone: hasStep, stalled, putBack: onDisk.isLost && known.size > 0, faults };
      results.push(result);
      told(result);
    }
  } finally {
    stalls.stop();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
  return results;
}

/** The results by what was done, a line each. */
export function killTable(results: readonly RoundResult[]): string {
  const row = (words: readonly string[]): string =>
    words.map((word, i) => (i === 0 ? word.padEnd(16) : word.padStart(9))).join('');
  const lines = [...plays.map(([name]) => name), 'all'].map((name) => {
    const those = results.filter(({ play }) => name === 'all' || play === name);
    const lost = those.map((one) => one.lost).sort((a, b) => a - b);
    const sum = those.reduce((total, { typed }) => total + typed, 0);
    const bad = those.reduce((total, { faults }) => total + faults.length, 0);
    const middle = lost[Math.floor(lost.length / 2)] ?? 0;
    const late = lost.filter((ms) => ms > promised).length;
    const stalled = Math.max(0, ...those.map((one) => one.stalled));
    return row([name, ...[those.length, sum, middle, lost.at(-1) ?? 0, late, stalled, bad].map(String)]);
  });
  return [row(['', 'rounds', 'typed', 'median', 'oldest', 'late', 'stalled', 'faults']), ...lines].join('\n');
}
