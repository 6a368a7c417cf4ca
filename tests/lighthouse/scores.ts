/** Lighthouse's categories and the least score that each should have, of 100. */
export const aims: Readonly<Record<string, number>> = {
  performance: 98,
  accessibility: 100,
  'best-practices': 100,
  seo: 100,
};

/** The parts of Lighthouse's report that are read. */
export interface Report {
  /** How fast Lighthouse found the machine: 125 to 800 is a phone of the middle, 1500 to 2000 a fast desk machine. */
  readonly environment: { readonly benchmarkIndex: number };
  readonly categories: Readonly<Record<string, { readonly score: number | null }>>;
  readonly audits: Readonly<
    Record<string, { readonly title: string; readonly score: number | null; readonly displayValue?: string }>
  >;
}

/** The score of a category, of 100; 0 where Lighthouse gives none. */
export function scoreOf({ categories }: Report, category: string): number {
  return Math.round((categories[category]?.score ?? 0) * 100);
}

/** The middle one of an odd number of scores. */
export function median(scores: readonly number[]): number {
  return [...scores].sort((a, b) => a - b)[Math.floor(scores.length / 2)] ?? 0;
}

/** The categories whose middle score is below its aim, in words. */
export function shortOf(reports: readonly Report[]): string[] {
  return Object.entries(aims).flatMap(([category, aim]) => {
    const score = median(reports.map((report) => scoreOf(report, category)));
    return score < aim ? [`${category}: ${score}, aim ${aim}`] : [];
  });
}
