import { describe, expect, it } from 'vitest';
import type { FromWorker, ToWorker } from '../../src/jobs/protocol';
import { jobs } from '../../src/jobs/jobs';
import { JobServer } from '../../src/jobs/server';
import { idOf, modelOf } from '../model/table';
import { asking, farm } from '../present/howSure/farm';

const model = modelOf(farm);

/** A server that holds the farm as sheet 1; its clock runs on with every look, so that each slice is short. */
function serve(): { server: JobServer; replies: FromWorker[]; ends: () => FromWorker[] } {
  const replies: FromWorker[] = [];
  let time = 0;
  const server = new JobServer(
    jobs,
    (reply) => replies.push(reply),
    () => {
      time += 10;
      return time;
    },
    25,
  );
  server.hear({ kind: 'sheet', sheet: 1, text: { whole: model.sheet } });
  return { server, replies, ends: () => replies.filter(({ kind }) => kind !== 'report') };
}

function work(server: JobServer): void {
  while (server.busy) server.work();
}

const draw = (id: number, more: Parameters<typeof asking>[1] = {}, sheet = 1): ToWorker => ({
  kind: 'ask',
  id,
  job: 'draws',
  sheet,
  request: asking(model, more),
});
const search = (id: number, sheet = 1): ToWorker => ({
  kind: 'ask',
  id,
  job: 'switching values',
  sheet,
  request: { subject: { result: idOf(model, 'r'), plan: 1, against: 0 }, target: '0.5' },
});

describe('the server of jobs', () => {
  it('works slice by slice until a job is finished', () => {
    const { server, replies } = serve();
    server.hear(draw(1));
    server.work();
    expect(server.busy).toBe(true);
    work(server);
    expect(replies.length).toBeGreaterThan(3);
    expect(replies.at(-1)).toMatchObject({ id: 1, kind: 'finished', found: { done: 20_000 } });
  });
  it('gives several jobs their turns, so that a short one does not wait for a long one', () => {
    const { server, ends } = serve();
    server.hear(draw(1, { draws: 200_000 }));
    server.hear(search(2));
    work(server);
    expect(ends().map(({ id, kind }) => [id, kind])).toEqual([
      [2, 'finished'],
      [1, 'finished'],
    ]);
  });
  it('lets go of a cancelled job and says so', () => {
    const { server, replies } = serve();
    server.hear(draw(1));
    server.hear({ kind: 'cancel', id: 1 });
    expect(server.busy).toBe(false);
    expect(replies).toEqual([{ id: 1, kind: 'cancelled' }]);
  });
  it('takes a sheet as the rows in which it differs from another', () => {
    const { server, ends } = serve();
    const [x] = modelOf(farm.replace('x: 1', 'x: 0.25')).sheet.rows;
    server.hear({ kind: 'sheet', sheet: 2, text: { like: 1, rows: [x!] } });
    server.hear(search(1));
    server.hear(search(2, 2));
    work(server);
    const value = (id: number): unknown => ends().find((reply) => reply.id === id);
    // The difference x + y - 1 is 0.5 where y is 1.5 - x.
    expect(JSON.stringify(value(1))).toContain(`"cell":${idOf(model, 'y')},"base":"1","all":["0.5"]`);
    expect(JSON.stringify(value(2))).toContain(`"cell":${idOf(model, 'y')},"base":"1","all":["1.25"]`);
  });
  it('goes on with a job whose sheet is forgotten meanwhile', () => {
    const { server, ends } = serve();
    server.hear(search(1));
    server.hear({ kind: 'forget', sheet: 1 });
    work(server);
    expect(ends()).toMatchObject([{ id: 1, kind: 'finished' }]);
  });
  it('says what it cannot do, and does the next', () => {
    const { server, ends } = serve();
    server.hear(draw(4, { draws: 2 ** 53 }));
    server.hear(search(5));
    work(server);
    expect(ends()).toMatchObject([
      { id: 4, kind: 'refused', reason: 'Invalid typed array length: 9007199254740992' },
      { id: 5, kind: 'finished' },
    ]);
  });
});
