// Kills the browser at random moments of work on the built site and says what was lost:
// npm run kill -- --rounds 200 --seed 1
import { parseArgs } from 'node:util';
import { preview } from 'vite';
import { killRounds, killTable } from './killRounds';

const { values } = parseArgs({
  options: { rounds: { type: 'string', default: '40' }, seed: { type: 'string', default: '1' } },
});
const server = await preview({ preview: { host: '127.0.0.1', port: 0 }, logLevel: 'error' });
const address = server.resolvedUrls?.local[0]?.replace(/\/$/, '') ?? '';
const given = { rounds: Number(values.rounds), seed: Number(values.seed) };
const results = await killRounds(given, address, ({ play, typed, lost, undone, stalled, putBack, faults }) => {
  const times = [`oldest lost ${lost} ms before the kill`, `stalled ${stalled} ms`];
  const steps = [undone ? 'a step undone' : 'no step kept', ...(putBack ? ['put back from second copies'] : [])];
  const parts = [play, `${typed} typed`, ...times, ...steps, ...faults];
  console.log(parts.join(', '));
});
await server.close();
console.log(`\n${killTable(results)}`);
console.log(`
typed: keys and titles; median and oldest: ms before the kill at which the oldest lost one was typed; late: rounds in
which that was more than 100 ms; stalled: ms for which the machine kept this program waiting; faults: torn or
unreadable records, models of earlier rounds that are gone, steps that undo does not take back as they were kept, and
losses older than 100 ms and the stall of their round`);
if (results.some(({ faults }) => faults.length > 0)) process.exitCode = 1;
