// Memory that draws hold: what percentiles and the worth of knowing need, of two plans. Aim: ten million draws, which
// is ten times as much, under 500 MB.
import { drawRisk } from '../../src/study/risk';
import { riskModel } from '../../src/study/riskModel';
import { against, cellOf, model, plan } from './shipped';

const risk = riskModel({ model, result: cellOf('margin'), plan, against });
const before = process.memoryUsage().arrayBuffers;
let most = 0;
for (const { done } of drawRisk(risk, { draws: 1_000_000, seed: 1, target: 0 })) {
  if (done > 0) most = Math.max(most, process.memoryUsage().arrayBuffers - before);
}
console.log(`\n1,000,000 draws of two plans hold ${(most / 2 ** 20).toFixed(0)} MB of columns`);
