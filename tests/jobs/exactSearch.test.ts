import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { edit, editIn } from '../../src/model/edit';
import { changedSince } from '../../src/ui/screens/breakeven/exactClient';
import { ExactSearch, readReply, type SearchRequest } from '../../src/jobs/exactSearch';
import { idOf, modelOf } from '../model/table';
import { said } from '../present/breakeven/given';

const text = 'x: 2 | range: 0 3\nk: 1 | in A: 1 | in B: 3\nlimit: 12\nr: limit - k * x';
const model = modelOf(text);

function request(sheet: SearchRequest['sheet'], changes: Partial<SearchRequest> = {}): SearchRequest {
  return {
    id: 7,
    sheet,
    subject: { result: idOf(model, 'r'), plan: 1, against: 0 },
    input: idOf(model, 'x'),
    from: '0',
    to: '20',
    target: '0',
    differenceTarget: '-6',
    ...changes,
  };
}

function found(search: ExactSearch, asked: SearchRequest): Record<string, string> {
  // What passes between the page and its worker is copied on the way.
  const reply = structuredClone(search.answer(structuredClone(asked)));
  expect(reply.id).toBe(asked.id);
  const read = readReply(reply, decimal(asked.from), decimal(asked.to));
  return Object.fromEntries(Object.entries(read).map(([name, one]) => [name, said(one, 18)]));
}

describe('an exact search beside the page', () => {
  it('answers for both plans and their difference', () => {
    expect(found(new ExactSearch(), request({ whole: model.sheet }))).toEqual({
      plan: '4 down',
      against: '12 down',
      difference: '3 down',
    });
  });
  it('follows an edit of which it is told no more than the row', () => {
    const search = new ExactSearch();
    found(search, request({ whole: model.sheet }));
    const next = edit(model, editIn(model, model.plans[0]!, idOf(model, 'limit'), '15')).model;
    const changed = changedSince(model.sheet, next.sheet);
    expect('rows' in changed && changed.rows).toHaveLength(1);
    expect(found(search, request(changed))).toMatchObject({ plan: '5 down', against: '15 down' });
  });
  it('keeps the model where nothing changed', () => {
    const search = new ExactSearch();
    found(search, request({ whole: model.sheet }));
    expect(changedSince(model.sheet, model.sheet)).toEqual({ rows: [] });
    expect(found(search, request({ rows: [] }, { target: '3' }))).toMatchObject({ plan: '3 down' });
  });
  it('answers for a model with one plan', () => {
    const alone = modelOf('x: 2\nr: 1 - 3 * x');
    const asked = request(
      { whole: alone.sheet },
      { subject: { result: idOf(alone, 'r'), plan: 0, against: undefined }, input: idOf(alone, 'x') },
    );
    expect(found(new ExactSearch(), asked)).toEqual({ plan: '0.333333333333333333 down' });
  });
  it('answers nothing about what is no input', () => {
    expect(found(new ExactSearch(), request({ whole: model.sheet }, { input: idOf(model, 'r') }))).toEqual({});
  });
  it('hears of another model as a whole', () => {
    const other = modelOf(`${text}\nmore: 1`);
    expect(changedSince(model.sheet, other.sheet)).toHaveProperty('whole');
    expect(changedSince(undefined, other.sheet)).toHaveProperty('whole');
  });
});
