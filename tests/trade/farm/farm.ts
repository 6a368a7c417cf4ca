import { readFileSync } from 'node:fs';
import { decimal } from '../../../src/core/number';
import { newTableFile } from '../../../src/files/tableFile';
import { modelTable } from '../../../src/files/tableKind';
import { readModelText } from '../../../src/files/readModel';
import { writeTable } from '../../../src/files/writeTable';
import type { Model } from '../../../src/model/model';
import { field, type Sheet } from '../../../src/model/sheet';
import { evaluatePlan } from '../../../src/model/values';
import type { FarmAnswers, FarmQuestion, FigureKey } from '../../../src/trade/farm/answers';
import { FormulaReader } from '../../../src/model/formulaReader';
import { createFarm } from '../../../src/trade/farm/createFarm';

const fileOf: Readonly<Record<FarmQuestion, string>> = {
  hire: 'transplant-hire',
  density: 'transplant-hire',
  plug: 'plug-media',
};

export function templateOf(question: FarmQuestion) {
  return readModelText(readFileSync(`models/${fileOf[question]}.csv`, 'utf8')).model.sheet;
}

const setUpDay = new Date(2026, 10, 29);

/** 288 boards, 24 and 128 holes, sown every week, 6 weeks today and 2 + 4 with a nursery; nothing is lost. */
export const own = {
  boards: 288,
  finishingHoles: 24,
  nurseryHoles: 128,
  interval: 7,
  timeToday: 6,
  nurseryTime: 2,
  finishingTime: 4,
  lostToday: 0,
  lostAtMove: 0,
  lostAfter: 0,
  marketLimit: 0,
} as const;

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

const reader = new FormulaReader();
const templates = new Map<FarmQuestion, Sheet>();

/** The model that a farm's answers make, as the page has it. */
export function farmOf(answers: FarmAnswers): Model {
  const template = templates.get(answers.question) ?? templateOf(answers.question);
  templates.set(answers.question, template);
  return createFarm(template, answers, setUpDay, reader);
}

/** The text of the file that a farm's answers make. */
export function farmFile(answers: FarmAnswers): string {
  const { sheet } = farmOf(answers);
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

/** The fields of an entry's row, by column. */
export function rowOf({ sheet }: Model, name: string): (column: string) => string {
  const row = sheet.rows.find((one) => field(one, 'name') === name);
  return (column) => (row === undefined ? 'no row' : field(row, column));
}
