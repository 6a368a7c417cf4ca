import { beforeAll, describe, expect, it, test } from 'vitest';
import { readModel } from '../../src/files/readModel';
import { translatedFile } from '../../src/files/translatedFile';
import { languageOf, type Catalogue } from '../../src/language/catalogue';
import spanish from '../../src/language/catalogues/es.json';
import { speak } from '../../src/language/language';
import type { Model } from '../../src/model/model';
import { evaluatePlan } from '../../src/model/values';
import { shippedFiles, shippedText } from '../language/dataTexts';

const models = shippedFiles.filter((file) => !file.startsWith('trials'));

function modelIn(text: string): Model {
  return readModel(new TextEncoder().encode(text)).model;
}

/** What a model comes to: every name with its unit and its value in each plan. */
function figuresOf(model: Model): unknown[] {
  const values = model.plans.map((plan) => evaluatePlan(plan));
  return model.cells.map(({ id, name, unitText }) => [
    name,
    unitText,
    ...values.map(({ numbers }) => numbers[id]?.toString()),
  ]);
}

test.each(shippedFiles)('%s is as it is in English', (file) =>
  expect(translatedFile(shippedText(file))).toBe(shippedText(file)),
);

describe('in Spanish', () => {
  beforeAll(() => speak(languageOf('es', spanish as unknown as Catalogue)));

  it.each(models)('%s has other words, no fault and the same figures', (file) => {
    const [before, after] = [modelIn(shippedText(file)), modelIn(translatedFile(shippedText(file)))];
    expect(after.faults).toEqual([]);
    expect(figuresOf(after)).toEqual(figuresOf(before));
    expect(after.title).not.toBe(before.title);
    expect(after.cells.filter(({ label }, i) => label === before.cells[i]?.label)).toEqual([]);
  });

  it('has the names of its plans and the words of its choices', () => {
    const model = modelIn(translatedFile(shippedText('transplant-hire.csv')));
    expect(model.plans.map(({ name }) => name)).toEqual(['Directo a la etapa final', 'Primero al vivero']);
    expect(model.cells.flatMap(({ choices }) => choices.map(({ words }) => words))).toContain('planchas enteras');
  });
});
