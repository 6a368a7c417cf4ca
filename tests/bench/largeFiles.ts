/** A file that is large in one way. */
export interface LargeFile {
  readonly name: string;
  readonly text: string;
}

const head = 'name,label,formula,unit,role,low,high';

function model(count: number, formula: (i: number) => string): string {
  const rows = Array.from({ length: count }, (_, i) => `c${i},Cell ${i},${formula(i)},,,,`);
  return [head, ...rows, ''].join('\n');
}

/** Models that each took seconds to open, or to be refused, in some earlier version. */
export const largeModels: readonly LargeFile[] = [
  { name: '10,000 cells, each from the one before', text: model(10_000, (i) => (i === 0 ? '1' : `c${i - 1} + 1`)) },
  { name: '3,000 unknown names', text: model(3000, (i) => `nowhere${i} + 1`) },
  { name: '9,000 formulas of 60 nested powers', text: model(9000, () => `${'2^('.repeat(60)}1${')'.repeat(60)}`) },
  { name: '900 formulas of 6,400 characters', text: model(900, () => Array<number>(1600).fill(7).join(' + ')) },
  { name: '9 MB of quotes', text: `${head}\na,"${'""'.repeat(4_500_000)}",1,,,,\n` },
  {
    name: '20,000 plan columns',
    text: `${head},${Array.from({ length: 20_000 }, (_, i) => `plan:P${i}`).join(',')}\na,A,1,,,,\n`,
  },
];

/** Trials of three steps, as many batches as the screen takes. */
export const manyBatches: LargeFile = {
  name: '10,000 timed batches',
  text: [
    'step,plants,seconds',
    ...Array.from({ length: 10_000 }, (_, i) => {
      const plants = 40 + (i % 30);
      return `${['moving', 'seeding', 'washing'][i % 3]},${plants},${Math.round(plants * (9 + ((i * 7919) % 100) / 30))}`;
    }),
    '',
  ].join('\n'),
};
