import { describe, expect, it } from 'vitest';
import type { Reply } from '../../src/present/howSure/reply';
import { RiskServer } from '../../src/jobs/server';
import { modelOf } from '../model/table';
import { asking, farm } from '../present/howSure/farm';

const model = modelOf(farm);
const { sheet } = model;

/** A server whose clock runs on with every look, so that each slice is short. */
function serve(): { server: RiskServer; replies: Reply[] } {
  const replies: Reply[] = [];
  let time = 0;
  const server = new RiskServer(
    (reply) => replies.push(reply),
    () => {
      time += 10;
      return time;
    },
  );
  return { server, replies };
}

describe('the server of draws', () => {
  it('works slice by slice until it has finished', () => {
    const { server, replies } = serve();
    server.ask({ ...asking(model), id: 1, sheet });
    server.work();
    expect(server.busy).toBe(true);
    while (server.busy) server.work();
    expect(replies.length).toBeGreaterThan(3);
    expect(replies.at(-1)).toEqual({ id: 1, finished: true });
  });
  it('drops a question for a newer one and keeps the model', () => {
    const { server, replies } = serve();
    server.ask({ ...asking(model), id: 1, sheet });
    server.work();
    server.ask({ ...asking(model, { seed: 2 }), id: 2, sheet: undefined });
    while (server.busy) server.work();
    expect(replies.filter((reply) => 'finished' in reply)).toEqual([{ id: 2, finished: true }]);
  });
  it('stops', () => {
    const { server, replies } = serve();
    server.ask({ ...asking(model), id: 1, sheet });
    server.stop();
    server.work();
    expect(server.busy).toBe(false);
    expect(replies.some((reply) => 'report' in reply)).toBe(false);
  });
  it('says what it cannot do', () => {
    const { server, replies } = serve();
    server.ask({ ...asking(model, { draws: 2 ** 53 }), id: 4, sheet });
    server.work();
    expect(server.busy).toBe(false);
    expect(replies).toHaveLength(1);
    expect(replies[0]).toHaveProperty('refused', 'Invalid typed array length: 9007199254740992');
  });
});
