import { createRoot } from 'solid-js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { JobRunner, Listener } from '../../../../src/jobs/runner';
import { createJob, type JobClient, type JobQuestion } from '../../../../src/ui/app/jobs/createJob';
import { modelOf } from '../../../model/table';
import { asking, farm } from '../../../present/howSure/farm';

const model = modelOf(farm);
const ask = (seed: number): JobQuestion<'draws'> => ({ sheet: model.sheet, request: asking(model, { seed }) });
const found = { done: 5 };

interface Sent {
  readonly request: unknown;
  readonly listener: Listener<unknown>;
  cancelled: boolean;
}

/** A job whose runner only writes down what it is asked. */
function start(): { client: JobClient<'draws'>; sent: Sent[]; dispose: () => void } {
  const sent: Sent[] = [];
  const runner: JobRunner = {
    ask: (_job, _sheet, request, listener) => {
      const one: Sent = { request, listener: listener, cancelled: false };
      sent.push(one);
      return () => {
        one.cancelled = true;
      };
    },
  };
  return createRoot((dispose) => ({ client: createJob('draws', runner), sent, dispose }));
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe('a job of a screen', () => {
  it('asks the first question at once and the newest of later ones after a pause', () => {
    const { client, sent } = start();
    client.ask(ask(1));
    vi.advanceTimersByTime(0);
    expect(sent).toMatchObject([{ request: { seed: 1 } }]);
    client.ask(ask(2));
    vi.advanceTimersByTime(50);
    client.ask(ask(3));
    vi.advanceTimersByTime(500);
    expect(sent.map(({ request }) => request)).toMatchObject([{ seed: 1 }, { seed: 3 }]);
    expect(sent.map(({ cancelled }) => cancelled)).toEqual([true, false]);
  });
  it('knows which question an answer is of', () => {
    const { client, sent } = start();
    const [first, second] = [ask(1), ask(2)];
    client.ask(first);
    vi.advanceTimersByTime(0);
    sent[0]!.listener.report({ phase: 'draws', share: 0.5, found });
    client.ask(second);
    expect(client.state()).toMatchObject({ found, share: 0, state: 'busy' });
    expect(client.state().of).toBe(first);
    vi.advanceTimersByTime(500);
    sent[1]!.listener.finished(found);
    expect(client.state().of).toBe(second);
    expect(client.state().state).toBe('done');
  });
  it('stops, keeps what was found, and starts again', () => {
    const { client, sent } = start();
    client.ask(ask(1));
    vi.advanceTimersByTime(0);
    sent[0]!.listener.report({ phase: 'draws', share: 0.5, found });
    client.stop();
    expect(sent[0]!.cancelled).toBe(true);
    expect(client.state()).toMatchObject({ state: 'stopped', found });
    client.again();
    vi.advanceTimersByTime(0);
    expect(sent).toHaveLength(2);
  });
  it('says that the worker began again, and why it was refused', () => {
    const { client, sent } = start();
    client.ask(ask(1));
    vi.advanceTimersByTime(0);
    sent[0]!.listener.restarted();
    expect(client.state()).toMatchObject({ state: 'busy', restarted: true });
    sent[0]!.listener.refused('too little memory');
    expect(client.state()).toMatchObject({ state: 'failed', reason: 'too little memory' });
  });
  it('ends with its component', () => {
    const { client, sent, dispose } = start();
    client.ask(ask(1));
    vi.advanceTimersByTime(0);
    dispose();
    expect(sent[0]!.cancelled).toBe(true);
  });
});
