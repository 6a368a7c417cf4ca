import { describe, expect, it } from 'vitest';
import { cautions, cautionsFor } from '../../../src/present/page/cautions';

describe('cautions', () => {
  it('are one a topic, and only the one on money is without a source', () => {
    expect(new Set(cautions.map(({ topic }) => topic)).size).toBe(cautions.length);
    expect(cautions.filter(({ source }) => source === '').map(({ topic }) => topic)).toEqual(['money']);
  });

  it.each([
    ['foam', /dust[\s\S]*eye[\s\S]*hot wire/i],
    ['hands', /repeats[\s\S]*stooped/i],
    ['electricity', /water[\s\S]*licensed electrician/i],
    ['food', /water[\s\S]*boards[\s\S]*rules of your place/i],
    ['wages', /overtime[\s\S]*differ by place/i],
    ['money', /no financial/i],
  ] as const)('%s', (topic, says) => {
    expect(cautionsFor([topic]).map(({ text }) => says.test(text))).toEqual([true]);
  });

  it('defer to local rules or to someone licensed', () => {
    const silent = cautions.filter(({ text }) => !/of your place|licensed|data sheet|rest before it hurts/.test(text));
    expect(silent).toEqual([]);
  });

  it('are given in the order of the list', () => {
    expect(cautionsFor(['wages', 'foam']).map(({ topic }) => topic)).toEqual(['foam', 'wages']);
  });
});
