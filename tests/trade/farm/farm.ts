import { readFileSync } from 'node:fs';
import { decimal } from '../../../src/core/number';
import { newTableFile } from '../../../src/files/tableFile';
import { modelTable } from '../../../src/files/tableKind';
import { readModelText } from '../../../src/files/readModel';
import { writeTable } from '../../../src/files/writeTable';
import type { Model } from '../../../src/model/model';
import { evaluatePlan } from '../../../src/model/values';
import type { FarmAnswers, FarmQuestion, FigureKey } from '../../../src/trade/farm/answers';
import { farmSheet } from '../../../src/trade/farm/farmSheet';

const fileOf: Readonly<Record<FarmQuestion, string>> = {
  hire: 'transplant-hire',
  density: 'transplant-hire',
  plug: 'plug-media',
};

export function templateOf(question: FarmQuestion) {
  return readModelText(readFileSync(`models/${fileOf[question]}.csv`, 'utf8')).model.sheet;
}

export const setUpDay = new Date(2026, 10, 29);

export type Given = Partial<Record<FigureKey, number>>;

export function answersOf(figures: Given, others: Partial<FarmAnswers> = {}): FarmAnswers {
  return {
    question: 'hire',
    name: undefined,
    currency: undefined,
    system: undefined,
    timeUnit: 'week',
    figures: new Map(Object.entries(figures).map(([key, value]) => [key as FigureKey, decimal(value)])),
    ...others,
  };
}

/** The text of the file that a farm's answers make. */
export function farmFile(answers: FarmAnswers): string {
  const sheet = farmSheet(templateOf(answers.question), answers, setUpDay);
  return writeTable(newTableFile(sheet, modelTable), sheet);
}

/** The model that a farm's file holds, read as any other. */
export function farmModel(answers: FarmAnswers): Model {
  return readModelText(farmFile(answers)).model;
}

/** An entry's value in a plan, as text. */
export function valueIn(model: Model, plan: number, name: string): string {
  return evaluatePlan(model.plans[plan]!).numbers[model.ids.get(name) ?? -1]?.toString() ?? 'none';
}
