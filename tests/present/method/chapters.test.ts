import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { designFor } from '../../../src/study/sobolSampling';
import { chapters } from '../../../src/present/method/chapters';

const entries = chapters.flatMap((chapter) => chapter.entries);

function sources(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.tsx'))
    .map((name) => readFileSync(join(folder, name), 'utf8'));
}

describe('the page on methods', () => {
  it('has each entry once', () => expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length));

  it('gives a source, the limits and the screen of each', () => {
    for (const { how, source, limits, where } of entries) {
      for (const text of [how, source, limits, where]) expect(text).toMatch(/\S.*[.\])]$/);
    }
  });

  it('has the entry that each link of the app leads to', () => {
    const linked = sources('src/ui').flatMap((text) =>
      [...text.matchAll(/<MethodLink[^>]*\bentry="([^"]+)"/g)].map(([, id]) => id!),
    );
    expect(linked.length).toBeGreaterThan(5);
    expect(linked.filter((id) => !entries.some((entry) => entry.id === id))).toEqual([]);
  });

  it('tells the design of the indices as it is', () => {
    const told = entries.find(({ id }) => id === 'indices')!.design!;
    const [small, usual, large] = [1, 100_000, 10_000_000].map((draws) => designFor(draws, 1));
    expect(told).toContain(`${usual!.replicates} sets scrambled apart`);
    expect(told).toContain(`from ${small!.points} to ${large!.points.toLocaleString('en')}`);
    expect(usual!.points).toBeGreaterThan(100_000 / 16);
    expect(usual!.points / 2).toBeLessThanOrEqual(100_000 / 16);
  });
});
