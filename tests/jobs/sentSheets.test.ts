import { describe, expect, it } from 'vitest';
import type { ToWorker } from '../../src/jobs/protocol';
import { changedRows, SentSheets } from '../../src/jobs/sentSheets';
import { edit, editIn } from '../../src/model/edit';
import type { Model } from '../../src/model/model';
import { idOf, modelOf } from '../model/table';

const text = 'x: 2\nlimit: 12\nr: limit - x';
const model = modelOf(text);

function changed(from: Model, number: string): Model {
  return edit(from, editIn(from, from.plans[0]!, idOf(from, 'limit'), number)).model;
}

function sending(): { sheets: SentSheets; posted: ToWorker[] } {
  const posted: ToWorker[] = [];
  return { sheets: new SentSheets((message) => posted.push(message)), posted };
}

describe('sheets that are sent to a worker', () => {
  it('go once', () => {
    const { sheets, posted } = sending();
    expect([sheets.numberOf(model.sheet), sheets.numberOf(model.sheet)]).toEqual([1, 1]);
    expect(posted).toHaveLength(1);
  });
  it('go as the rows that an edit changed', () => {
    const { sheets, posted } = sending();
    sheets.numberOf(model.sheet);
    sheets.numberOf(changed(model, '15').sheet);
    expect(posted[1]).toMatchObject({ kind: 'sheet', sheet: 2, text: { like: 1, rows: [{ row: 3 }] } });
  });
  it('go whole where they are of another model', () => {
    const { sheets, posted } = sending();
    sheets.numberOf(model.sheet);
    sheets.numberOf(modelOf(`${text}\nmore: 1`).sheet);
    expect(posted[1]).toHaveProperty('text.whole');
  });
  it('are forgotten once four others were used since', () => {
    const { sheets, posted } = sending();
    sheets.numberOf(model.sheet);
    for (const number of ['1', '2', '3', '4']) sheets.numberOf(changed(model, number).sheet);
    expect(posted.filter(({ kind }) => kind === 'forget')).toEqual([{ kind: 'forget', sheet: 1 }]);
    expect(sheets.numberOf(model.sheet)).toBe(6);
  });
  it('differ in no row where nothing changed', () => expect(changedRows(model.sheet, model.sheet)).toEqual([]));
});
