import { createRoot } from 'solid-js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createRiskClient, type RiskClient } from '../../../../src/ui/kit/risk/client';
import type { DrawsRequest, DrawsFound, Reply, Sent } from '../../../../src/present/howSure/reply';
import { modelOf } from '../../../model/table';
import { asking, farm } from '../../../present/howSure/farm';

const model = modelOf(farm);
const ask = (seed: number): DrawsRequest => ({ ...asking(model, { seed }), sheet: model.sheet });
const found: DrawsFound = {
  done: 5,
  failed: 0,
  spread: undefined,
  certain: false,
  details: undefined,
  indices: undefined,
};

interface Opened {
  readonly sent: (Sent | 'stop')[];
  readonly hear: (reply: Reply) => void;
  readonly die: () => void;
  closed: boolean;
}

function start(): { client: RiskClient; opened: Opened[]; dispose: () => void } {
  const opened: Opened[] = [];
  return createRoot((dispose) => {
    const client = createRiskClient((hear, die) => {
      const one: Opened = { sent: [], hear, die, closed: false };
      opened.push(one);
      return {
        post: (message) => one.sent.push(message),
        close: () => {
          one.closed = true;
        },
      };
    });
    return { client, opened, dispose };
  });
}

function asks({ sent }: Opened): Sent[] {
  return sent.filter((message) => message !== 'stop');
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe('the client of draws', () => {
  it('asks the first question at once and a later one after a pause, without sending the model again', () => {
    const { client, opened } = start();
    client.ask(ask(1));
    vi.advanceTimersByTime(0);
    expect(asks(opened[0]!)).toMatchObject([{ seed: 1, sheet: model.sheet }]);
    client.ask(ask(2));
    vi.advanceTimersByTime(50);
    client.ask(ask(3));
    vi.advanceTimersByTime(500);
    expect(asks(opened[0]!).map(({ seed }) => seed)).toEqual([1, 3]);
    expect(asks(opened[0]!)[1]!.sheet).toBeUndefined();
  });
  it('hears the newest question only', () => {
    const { client, opened } = start();
    client.ask(ask(1));
    vi.advanceTimersByTime(0);
    const first = asks(opened[0]!)[0]!;
    client.ask(ask(2));
    opened[0]!.hear({ id: first.id, report: { phase: 'draws', share: 0.5, found } });
    expect(client.shown().found).toBeUndefined();
    vi.advanceTimersByTime(500);
    opened[0]!.hear({ id: asks(opened[0]!)[1]!.id, report: { phase: 'draws', share: 0.5, found } });
    expect(client.shown()).toMatchObject({ found, state: 'busy', share: 0.5, of: { seed: 2 } });
  });
  it('stops, keeps what was found, and starts again', () => {
    const { client, opened } = start();
    client.ask(ask(1));
    vi.advanceTimersByTime(0);
    const { id } = asks(opened[0]!)[0]!;
    opened[0]!.hear({ id, report: { phase: 'draws', share: 0.5, found } });
    client.stop();
    opened[0]!.hear({ id, finished: true });
    expect(client.shown()).toMatchObject({ state: 'stopped', found });
    expect(opened[0]!.sent.at(-1)).toBe('stop');
    client.again();
    vi.advanceTimersByTime(0);
    expect(asks(opened[0]!)).toHaveLength(2);
  });
  it('starts a worker that died once more, says so, and gives up when it dies again', () => {
    const { client, opened } = start();
    client.ask(ask(1));
    vi.advanceTimersByTime(0);
    opened[0]!.die();
    expect(client.shown()).toMatchObject({ state: 'busy', restarted: true });
    expect(opened[0]!.closed).toBe(true);
    expect(asks(opened[1]!)).toMatchObject([{ seed: 1, sheet: model.sheet }]);
    opened[1]!.die();
    expect(client.shown().state).toBe('failed');
    expect(client.shown().reason).toContain('ended twice');
  });
  it('says why the engine refused', () => {
    const { client, opened } = start();
    client.ask(ask(1));
    vi.advanceTimersByTime(0);
    opened[0]!.hear({ id: asks(opened[0]!)[0]!.id, refused: 'too little memory' });
    expect(client.shown()).toMatchObject({ state: 'failed', reason: 'too little memory' });
  });
  it('ends its worker with the component', () => {
    const { client, opened, dispose } = start();
    client.ask(ask(1));
    vi.advanceTimersByTime(0);
    dispose();
    expect(opened[0]!.closed).toBe(true);
  });
});
