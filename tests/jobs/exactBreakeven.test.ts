import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { exactBreakeven, readBreakeven, type BreakevenRequest } from '../../src/jobs/exactBreakeven';
import type { Model } from '../../src/model/model';
import { idOf, modelOf } from '../model/table';
import { said } from '../present/breakeven/given';
import { done } from './done';

const text = 'x: 2 | range: 0 3\nk: 1 | in A: 1 | in B: 3\nlimit: 12\nr: limit - k * x';
const model = modelOf(text);

function request(changes: Partial<BreakevenRequest> = {}): BreakevenRequest {
  return {
    subject: { result: idOf(model, 'r'), plan: 1, against: 0 },
    input: idOf(model, 'x'),
    from: '0',
    to: '20',
    target: '0',
    differenceTarget: '-6',
    ...changes,
  };
}

function found({ sheet }: Model, asked: BreakevenRequest): Record<string, string> {
  // What passes between the page and its worker is copied on the way.
  const { found: sent } = structuredClone(done(exactBreakeven, sheet, structuredClone(asked)));
  const read = readBreakeven(sent, decimal(asked.from), decimal(asked.to));
  return Object.fromEntries(Object.entries(read).map(([name, one]) => [name, said(one, 18)]));
}

describe('an exact search beside the page', () => {
  it('answers for both plans and their difference', () => {
    expect(found(model, request())).toEqual({ plan: '4 down', against: '12 down', difference: '3 down' });
  });
  it('reports a share of the way that never falls', () => {
    const shares = done(exactBreakeven, model.sheet, request()).reports.map(({ share }) => share);
    expect(shares.length).toBeGreaterThan(3);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.every((share) => share > 0 && share <= 1)).toBe(true);
  });
  it('answers for a model with one plan', () => {
    const alone = modelOf('x: 2\nr: 1 - 3 * x');
    const asked = request({
      subject: { result: idOf(alone, 'r'), plan: 0, against: undefined },
      input: idOf(alone, 'x'),
    });
    expect(found(alone, asked)).toEqual({ plan: '0.333333333333333333 down' });
  });
  it('answers nothing about what is no input', () => {
    expect(found(model, request({ input: idOf(model, 'r') }))).toEqual({});
  });
});
