import { expect, it } from 'vitest';
import { aims, median, scoreOf, shortOf, type Report } from './scores';

const report = (score: number | null): Report => ({
  categories: Object.fromEntries(Object.keys(aims).map((category) => [category, { score }])),
  audits: {},
  environment: { benchmarkIndex: 1500 },
});

it('a score is of 100, and 0 where there is none', () => {
  expect([scoreOf(report(0.97), 'seo'), scoreOf(report(null), 'seo'), scoreOf(report(1), 'nothing')]).toEqual([
    97, 0, 0,
  ]);
});

it('the middle of three runs counts', () => {
  expect(median([90, 100, 98])).toBe(98);
  expect(shortOf([report(1), report(0.9), report(1)])).toEqual([]);
  expect(shortOf([report(0.97), report(0.9), report(1)])).toEqual([
    'performance: 97, aim 98',
    'accessibility: 97, aim 100',
    'best-practices: 97, aim 100',
    'seo: 97, aim 100',
  ]);
});
