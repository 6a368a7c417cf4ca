import { chanceOf } from '../kill/chance';
import { formulas } from './formulas';
import type { FuzzKind } from './kind';
import { links } from './links';
import { records } from './records';
import { modelFiles, trialsFiles } from './tables';

const fuzzKinds: readonly FuzzKind[] = [formulas, modelFiles, links, trialsFiles, records];

/** How the cases of one kind went. */
interface FuzzResult {
  readonly name: string;
  readonly cases: number;
  /** Of the processor. */
  readonly seconds: number;
  /** Each with the seed that repeats it as the first case. */
  readonly failures: readonly { readonly seed: number; readonly what: string }[];
}

/** Failures of one kind after which it stops. */
const mostFailures = 20;
/** Seconds of the processor that one case may take: a thousand times what they do. */
const longest = 2;

const processorSeconds = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};

async function failureOf({ run }: FuzzKind, seed: number): Promise<string> {
  const begun = processorSeconds();
  try {
    const what = await run(chanceOf(seed));
    const took = processorSeconds() - begun;
    return what === '' && took > longest ? `took ${took.toFixed(1)} s` : what;
  } catch (thrown) {
    return `threw ${thrown instanceof Error ? (thrown.stack ?? thrown.message).slice(0, 600) : String(thrown)}`;
  }
}

async function ofKind(kind: FuzzKind, cases: number, seed: number): Promise<FuzzResult> {
  const begun = processorSeconds();
  const failures: { seed: number; what: string }[] = [];
  let done = 0;
  for (; done < cases && failures.length < mostFailures; done += 1) {
    const what = await failureOf(kind, seed + done);
    if (what !== '') failures.push({ seed: seed + done, what });
  }
  return { name: kind.name, cases: done, seconds: processorSeconds() - begun, failures };
}

/**
 * Runs cases of every kind; the same seed gives the same cases.
 * @param only the kind to run, all cases of which are its own; blank for all
 */
export async function fuzz(cases: number, seed: number, only = ''): Promise<FuzzResult[]> {
  const kinds = fuzzKinds.filter(({ name }) => only === '' || name === only);
  const parts = kinds.reduce((sum, { share }) => sum + share, 0);
  const results: FuzzResult[] = [];
  for (const kind of kinds) results.push(await ofKind(kind, Math.ceil((cases * kind.share) / parts), seed));
  return results;
}
