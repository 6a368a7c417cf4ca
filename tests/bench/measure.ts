/** How long one kind of work takes. */
export interface Timing {
  /** Median over the runs, in nanoseconds for one call. */
  nsPerCall: number;
  /** Fastest and slowest run, in nanoseconds for one call: how far to trust the median. */
  fastest: number;
  slowest: number;
  /** Median over the rounds of this run by the first work's in the same round: holds where the machine changes pace. */
  ratio: number;
  callsPerRun: number;
}

export interface Options {
  /** Odd, so that the median is a run that happened. */
  runs?: number;
  /** Calls are doubled until one run takes this long; the doubling is the warm-up as well. */
  msPerRun?: number;
  /** In milliseconds, only ever rising. */
  clock?: () => number;
}

type Work = () => unknown;

/** Every result goes here: an engine may drop a call whose result nobody can see. */
const sink: { last: unknown } = { last: undefined };

function timeCalls(work: Work, calls: number, clock: () => number): number {
  const start = clock();
  for (let call = 0; call < calls; call++) sink.last = work();
  return clock() - start;
}

function callsToFill(work: Work, msPerRun: number, clock: () => number): number {
  let calls = 1;
  while (timeCalls(work, calls, clock) < msPerRun) calls *= 2;
  return calls;
}

function median(numbers: readonly number[]): number {
  return [...numbers].sort((a, b) => a - b)[(numbers.length - 1) / 2]!;
}

/** @param runs,first nanoseconds for one call of this work and of the first, round by round */
function summary(runs: readonly number[], first: readonly number[], callsPerRun: number): Timing {
  return {
    nsPerCall: median(runs),
    fastest: Math.min(...runs),
    slowest: Math.max(...runs),
    ratio: median(runs.map((ns, round) => ns / first[round]!)),
    callsPerRun,
  };
}

/**
 * Times several kinds of work in rounds, a run of each in turn, so that a busy moment of the machine hits all of them
 * and their ratios hold. The call itself costs about 1 to 5 ns: work that is shorter than 100 ns belongs into a loop of
 * its own.
 */
export function measureTogether<Name extends string>(
  works: Record<Name, Work>,
  { runs = 15, msPerRun = 20, clock = () => performance.now() }: Options = {},
): Record<Name, Timing> {
  const entries = Object.entries<Work>(works).map(([name, work]) => ({
    name,
    work,
    calls: callsToFill(work, msPerRun, clock),
    taken: [] as number[],
  }));
  for (let run = 0; run < runs; run++) {
    for (const { work, calls, taken } of entries) taken.push((timeCalls(work, calls, clock) * 1e6) / calls);
  }
  const first = entries[0]!.taken;
  return Object.fromEntries(entries.map(({ name, taken, calls }) => [name, summary(taken, first, calls)])) as Record<
    Name,
    Timing
  >;
}

/** Times one kind of work: nanoseconds for one call. */
export function measure(work: Work, options: Options = {}): Timing {
  return measureTogether({ work }, options).work;
}

const UNITS: [number, string][] = [
  [1e9, 's'],
  [1e6, 'ms'],
  [1e3, 'µs'],
  [1, 'ns'],
];

/** "1.23 ms": nanoseconds with three digits in the unit that suits them. */
export function duration(ns: number): string {
  const [size, unit] = UNITS.find(([size]) => ns >= size) ?? UNITS.at(-1)!;
  return `${Number((ns / size).toPrecision(3))} ${unit}`;
}

/** Prints an aligned table: name, time of one call, spread of the runs, ratio to the first. */
export function printTable(title: string, timings: Record<string, Timing>): void {
  const rows = Object.entries(timings);
  const width = Math.max(...rows.map(([name]) => name.length));
  console.log(`\n${title}`);
  for (const [name, { nsPerCall, fastest, slowest, ratio }] of rows) {
    const spread = `${duration(fastest)} to ${duration(slowest)}`;
    const times = `${Number(ratio.toPrecision(3))} x`;
    console.log(`  ${name.padEnd(width)} ${duration(nsPerCall).padStart(9)}  (${spread})`.padEnd(width + 38), times);
  }
}
