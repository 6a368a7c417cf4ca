import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readModelText } from '../../../../src/files/readModel';
import { buildModel } from '../../../../src/model/buildModel';
import { withStepPrice } from '../../../../src/model/change/stepPrice';
import { cellNamed } from '../../../../src/model/model';
import { evaluatePlan } from '../../../../src/model/values';
import { readSteps, stepLabels, stepPriceSaid, stepsOf } from '../../../../src/present/numbers/own/stepPriceForm';
import { createFormat } from '../../../../src/present/text/numberFormat';
import { textOf } from '../../../../src/present/text/phrase';
import { modelOf } from '../../../model/table';

const format = createFormat('en-GB');
const { model } = readModelText(readFileSync('models/plug-media.csv', 'utf8'));
const label = 'List price';
const steps = [
  { from: '150000', price: '0.024' },
  { from: '250000', price: '0.022' },
];

function stepped(inPlaceOf: string | undefined) {
  const price = inPlaceOf === undefined ? undefined : cellNamed(model, inPlaceOf);
  const quantity = cellNamed(model, 'foam_sown')!;
  const about = { label, unit: 'GBP/plug', quantity, first: '0.026', steps, labels: stepLabels(label), source: '' };
  const { sheet, row } = withStepPrice(model.sheet, { ...about, inPlaceOf: price });
  const made = buildModel(sheet);
  return { made, cell: made.cells.find((one) => one.row === row)! };
}

describe('what a form begins with', () => {
  it('is nothing for a new price', () =>
    expect(stepsOf(model, undefined, format)).toEqual({ first: '', steps: [{ from: '', price: '' }], quantity: '' }));

  it('is the number of a price that has no steps yet', () =>
    expect(stepsOf(model, cellNamed(model, 'foam_price'), format)).toEqual({
      first: '0.026',
      steps: [{ from: '', price: '' }],
      quantity: '',
    }));

  it('is the steps of a price that has some', () => {
    const { made, cell } = stepped('foam_price');
    const shown = steps.map((step) => ({ ...step, from: step.from.replace(/000$/, ',000') }));
    expect(stepsOf(made, cell, format)).toEqual({ first: '0.026', steps: shown, quantity: 'foam_sown' });
  });
});

describe('what is typed', () => {
  it('becomes numbers as files write them', () =>
    expect(readSteps({ first: '0.03', steps: [{ from: '100,000', price: '0.025' }] }, createFormat('en-GB'))).toEqual({
      first: '0.03',
      steps: [{ from: '100000', price: '0.025' }],
    }));

  it('is told what is wrong with it, each at its field', () =>
    expect(
      readSteps(
        {
          first: 'x',
          steps: [
            { from: '0', price: '1' },
            { from: '250000', price: '' },
            { from: '100000', price: '1' },
          ],
        },
        format,
      ),
    ).toMatchObject({
      faulty: true,
      first: expect.stringMatching(/^not a number: x\./) as string,
      steps: [
        { from: 'not above 0: 0. Enter the quantity from which the step counts.' },
        { price: expect.stringMatching(/^no number: blank/) as string },
        { from: 'not rising: 100,000 after 250,000. Enter each step above the one before.' },
      ],
    }));
});

describe('what was made', () => {
  function said(inPlaceOf: string | undefined): string {
    const { made, cell } = stepped(inPlaceOf);
    const values = made.plans.map((plan) => evaluatePlan(plan));
    const isNew = inPlaceOf === undefined;
    return textOf(stepPriceSaid({ model: made, values, price: cell, count: 3, isNew }, format)).replaceAll(
      '\u00a0',
      ' ',
    );
  }

  it('is said with the price in force today', () =>
    expect(said('foam_price')).toBe(
      'List price goes by quantity now, with 3 prices. Today it is 0.0240 GBP per plug at 200,000 plugs a year.',
    ));

  it('of a new price says that it waits to be used', () =>
    expect(said(undefined)).toMatch(/Nothing is made from it yet: name it in a formula\.$/));

  it('is said for each plan where they buy different quantities', () => {
    const plain = modelOf(`
      bought [plug/year]: 1 | in Few: 100000 | in Many: 300000
      price [GBP/plug]: 0.03`);
    const about = { label, unit: 'GBP/plug', first: '0.03', steps, labels: stepLabels(label), source: '' };
    const { sheet } = withStepPrice(plain.sheet, {
      ...about,
      quantity: cellNamed(plain, 'bought')!,
      inPlaceOf: cellNamed(plain, 'price'),
    });
    const made = buildModel(sheet);
    const values = made.plans.map((plan) => evaluatePlan(plan));
    const price = cellNamed(made, 'price')!;
    const told = textOf(stepPriceSaid({ model: made, values, price, count: 3, isNew: false }, format));
    expect(told.replaceAll('\u00a0', ' ')).toBe(
      'price goes by quantity now, with 3 prices. Today it is 0.0300 GBP per plug at 100,000 plugs a year in Few; 0.0220 GBP per plug at 300,000 plugs a year in Many.',
    );
  });
});
