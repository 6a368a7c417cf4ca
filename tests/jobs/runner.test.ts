import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { FromWorker, ToWorker } from '../../src/jobs/protocol';
import { jobs } from '../../src/jobs/jobs';
import { createJobRunner, type JobRunner, type Listener } from '../../src/jobs/runner';
import { JobServer } from '../../src/jobs/server';
import { idOf, modelOf } from '../model/table';
import { asking, farm } from '../present/howSure/farm';

const model = modelOf(farm);

interface Opened {
  readonly sent: ToWorker[];
  readonly hear: (message: FromWorker) => void;
  readonly die: () => void;
  closed: boolean;
}

/** A runner whose workers do nothing by themselves. */
function start(): { runner: JobRunner; opened: Opened[] } {
  const opened: Opened[] = [];
  const runner = createJobRunner((hear, die) => {
    const one: Opened = { sent: [], hear, die, closed: false };
    opened.push(one);
    return {
      post: (message) => one.sent.push(message),
      close: () => {
        one.closed = true;
      },
    };
  });
  return { runner, opened };
}

/** A listener that writes down what it is told. */
function listening(): { told: string[]; listener: Listener<unknown> } {
  const told: string[] = [];
  return {
    told,
    listener: {
      report: ({ share }) => told.push(`report ${share}`),
      finished: () => told.push('finished'),
      refused: (reason) => told.push(`refused: ${reason}`),
      restarted: () => told.push('restarted'),
    },
  };
}

const asked = ({ sent }: Opened): number[] => sent.flatMap((one) => (one.kind === 'ask' ? one.id : []));
const draw = (runner: JobRunner, listener: Listener<unknown>): (() => void) =>
  runner.ask('draws', model.sheet, asking(model), listener);

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe('the runner of jobs', () => {
  it('opens one worker for all jobs, with the first of them', () => {
    const { runner, opened } = start();
    expect(opened).toEqual([]);
    draw(runner, listening().listener);
    draw(runner, listening().listener);
    expect(opened).toHaveLength(1);
    expect(asked(opened[0]!)).toEqual([1, 2]);
  });
  it('tells each listener of its own job alone', () => {
    const { runner, opened } = start();
    const [first, second] = [listening(), listening()];
    draw(runner, first.listener);
    draw(runner, second.listener);
    opened[0]!.hear({ id: 2, kind: 'report', report: { phase: 'draws', share: 0.5, found: undefined } });
    opened[0]!.hear({ id: 1, kind: 'finished', found: {} });
    expect([first.told, second.told]).toEqual([['finished'], ['report 0.5']]);
  });
  it('tells nothing more of a cancelled job', () => {
    const { runner, opened } = start();
    const { told, listener } = listening();
    draw(runner, listener)();
    opened[0]!.hear({ id: 1, kind: 'finished', found: {} });
    expect(opened[0]!.sent.at(-1)).toEqual({ kind: 'cancel', id: 1 });
    expect(told).toEqual([]);
  });
  it('begins again in a new worker where one ended, says so, and refuses what ends it twice', () => {
    const { runner, opened } = start();
    const { told, listener } = listening();
    draw(runner, listener);
    opened[0]!.die();
    expect(opened[0]!.closed).toBe(true);
    expect(asked(opened[1]!)).toEqual([1]);
    expect(opened[1]!.sent[0]).toHaveProperty('text.whole');
    opened[1]!.die();
    expect(told).toEqual(['restarted', 'refused: the worker that does it ended twice.']);
    expect(opened).toHaveLength(2);
  });
  it('ends a worker that does not let go of a cancelled job, and asks it for the others anew without a word', () => {
    const { runner, opened } = start();
    const other = listening();
    const cancel = draw(runner, listening().listener);
    draw(runner, other.listener);
    cancel();
    vi.advanceTimersByTime(500);
    expect(opened[0]!.closed).toBe(true);
    expect(asked(opened[1]!)).toEqual([2]);
    expect(other.told).toEqual([]);
  });
  it('waits for a worker that lets go', () => {
    const { runner, opened } = start();
    draw(runner, listening().listener)();
    opened[0]!.hear({ id: 1, kind: 'cancelled' });
    vi.advanceTimersByTime(500);
    expect(opened[0]!.closed).toBe(false);
  });
  it('finds with a server behind it what the job finds by itself', () => {
    const messages: FromWorker[] = [];
    const server = new JobServer(
      jobs,
      (message) => messages.push(structuredClone(message)),
      () => 0,
      25,
    );
    let heard: (message: FromWorker) => void = () => undefined;
    const runner = createJobRunner((hear) => {
      heard = hear;
      return { post: (message) => server.hear(structuredClone(message)), close: () => undefined };
    });
    const found: unknown[] = [];
    const subject = { result: idOf(model, 'r'), plan: 1, against: 0 };
    const listener = { ...listening().listener, finished: (one: unknown) => found.push(one) };
    runner.ask('switching values', model.sheet, { subject, target: '0.5' }, listener);
    while (server.busy) server.work();
    for (const message of messages) heard(message);
    // The difference x + y - 1 is 0.5 where the one that moves is 0.5, the other 1.
    expect(found).toMatchObject([[{ all: ['0.5'] }, { all: ['0.5'] }]]);
  });
});
