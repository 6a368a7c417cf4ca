// Gives the program formulas, files, links, timed trials and kept records that chance made, and says what went wrong:
// npm run fuzz -- --cases 100000 --seed 1
import { parseArgs } from 'node:util';
import { fuzz } from './fuzzKinds';

const { values } = parseArgs({
  options: {
    cases: { type: 'string', default: '20000' },
    seed: { type: 'string', default: '1' },
    kind: { type: 'string', default: '' },
  },
});
const results = await fuzz(Number(values.cases), Number(values.seed), values.kind);
for (const { name, cases, seconds, failures } of results) {
  console.log(`${name}: ${cases} cases, ${seconds.toFixed(1)} s, ${failures.length} failures`);
  for (const { seed, what } of failures) {
    console.log(`  ${what}\n    again: npm run fuzz -- --kind "${name}" --cases 1 --seed ${seed}`);
  }
}
if (results.length === 0) console.log(`no such kind: ${values.kind}`);
if (results.length === 0 || results.some(({ failures }) => failures.length > 0)) process.exitCode = 1;
