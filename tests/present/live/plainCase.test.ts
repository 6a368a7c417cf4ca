// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import { plainCase, type PlainCase } from '../../../src/present/live/plainCase';
import { madeLine } from '../../../src/present/live/liveTexts';
import { createFormat } from '../../../src/present/text/numberFormat';
import { evaluatePlan } from '../../../src/model/values';
import { readModelText } from '../../../src/files/readModel';

const model = readModelText(`name,label,unit,formula,plan: A,plan: B,budget
,Does <b>it</b> pay? A & B,,,,,
sales,"Sales, ""all""",EUR/year,,1000,1500,return
work,Work,EUR/year,,0,200,cost
`).model;

function of(more: Partial<PlainCase> = {}): PlainCase {
  const values = model.plans.map((plan) => evaluatePlan(plan));
  return {
    model,
    values,
    plan: 1,
    against: 0,
    words: 'Why <now>',
    prepared: 'Prepared by P.',
    day: '9 March 2031',
    ...more,
  };
}

function shown(of: PlainCase): { title: string; document: Document } {
  const { title, text } = plainCase(of, createFormat('en'));
  return { title, document: new DOMParser().parseFromString(text, 'text/html') };
}

describe('a case without its script', () => {
  it('says what it comes to, with the budget, the words and the day', () => {
    const { document } = shown(of());
    expect(document.querySelector('.finding')?.textContent).toMatch(/^B in place of A adds 300\.00.EUR a year/);
    const cells = [...document.querySelectorAll('tr')].map((row) => [...row.children].map((cell) => cell.textContent));
    expect(cells.slice(0, 2)).toEqual([
      ['Added returns', '+500.00'],
      ['Sales, "all"', '500.00'],
    ]);
    expect(cells.at(-1)).toEqual(['Net change', '+300.00']);
    expect(document.querySelector('caption')?.textContent).toContain('in EUR/year');
    expect(document.body.textContent).toContain('Why <now>');
    expect(document.body.textContent).toContain('Made with Raftmargin on 9 March 2031.');
    expect(document.querySelector('.still')?.textContent).toContain('as it was sent');
  });

  it('takes no text of a model for HTML', () => {
    const { title, document } = shown(of());
    expect(title).toBe('Does &lt;b&gt;it&lt;/b&gt; pay? A &amp; B');
    expect(document.querySelector('h1')?.textContent).toBe('Does <b>it</b> pay? A & B');
    expect(document.querySelector('b')).toBeNull();
  });

  it('leaves out what nobody wrote', () => {
    const empty = [...shown(of({ words: '', prepared: '' })).document.querySelectorAll('p')];
    expect(empty.every(({ textContent }) => textContent !== '')).toBe(true);
    expect(madeLine('')).toBe('Made with Raftmargin.');
  });
});
