import { createMemo, createResource, type Accessor, type Resource } from 'solid-js';
import { newTableFile, readTable } from '../../../files/tableFile';
import { modelTable } from '../../../files/tableKind';
import { writeTable } from '../../../files/writeTable';
import { currenciesOf } from '../../../model/change/money';
import { FormulaReader } from '../../../model/formulaReader';
import type { Model } from '../../../model/model';
import type { Sheet } from '../../../model/sheet';
import { evaluatePlan, type Values } from '../../../model/values';
import { farmResults, type FarmResults } from '../../../present/setUp/farmResults';
import { greyFigures } from '../../../present/setUp/greyFigures';
import { readAnswers, type ReadFarm, type TypedAnswers } from '../../../present/setUp/readAnswers';
import { farmFileName } from '../../../present/setUp/setUpTexts';
import type { FarmQuestion, FigureKey } from '../../../trade/farm/answers';
import { createFarm } from '../../../trade/farm/createFarm';
import { shippedModels } from '../../app/files/shippedModels';
import { localFormat } from '../../app/preferences/localFormat';
import {
  farmCurrencySetting,
  farmFigureSetting,
  farmNameSetting,
  farmNoLimitSetting,
  farmQuestionSetting,
  farmTimeUnitSetting,
  farmUnitsSetting,
} from '../../app/preferences/settings/setUp';
import { farmSourceOf } from '../../app/preferences/timedFigure';
import type { Choice } from '../../app/screenProps';

/** A shipped model that farms are made from, with what has been understood of its formulas. */
interface Template {
  readonly sheet: Sheet;
  readonly currency: string;
  readonly reader: FormulaReader;
}

/** The farm that the answers make, while they are typed. */
interface MadeFarm {
  readonly model: Model;
  readonly values: readonly Values[];
}

/** What stands on the page, and what follows from it. */
export interface FarmDraft {
  readonly template: Resource<Template>;
  readonly read: Accessor<ReadFarm>;
  /** Undefined until the template is there. */
  readonly results: Accessor<FarmResults | undefined>;
  /** What stands in the model where a field is blank. */
  readonly grey: Accessor<ReadonlyMap<FigureKey, string>>;
  /** The farm as a model's file. */
  readonly file: () => File | undefined;
}

const templates: Readonly<Record<FarmQuestion, string>> = {
  hire: 'transplant-hire',
  density: 'transplant-hire',
  plug: 'plug-media',
};

async function loadTemplate(name: string): Promise<Template> {
  const shipped = shippedModels.find(({ key }) => key === name) ?? shippedModels[0];
  const { sheet } = readTable(await shipped.load(), modelTable).file;
  return { sheet, currency: currenciesOf(sheet)[0] ?? '', reader: new FormulaReader() };
}

function typedIn(choice: Choice): TypedAnswers {
  return {
    question: choice.get(farmQuestionSetting),
    name: choice.get(farmNameSetting),
    currency: choice.get(farmCurrencySetting),
    system: choice.get(farmUnitsSetting),
    timeUnit: choice.get(farmTimeUnitSetting),
    noLimit: choice.get(farmNoLimitSetting),
    textOf: (key) => choice.get(farmFigureSetting(key)),
    sourceOf: (key) => farmSourceOf(choice, key),
  };
}

function madeFrom({ sheet: template, reader }: Template, { answers }: ReadFarm): MadeFarm {
  const model = createFarm(template, answers, new Date(), reader);
  return { model, values: model.plans.map((plan) => evaluatePlan(plan)) };
}

/** Works out the farm anew with each answer. */
export function createFarmDraft(choice: Choice): FarmDraft {
  const [template] = createResource(() => templates[choice.get(farmQuestionSetting)], loadTemplate);
  const read = createMemo(() => readAnswers(typedIn(choice), localFormat));
  const made = createMemo(() => {
    const from = template();
    return from === undefined ? undefined : madeFrom(from, read());
  });
  const results = createMemo(() => {
    const farm = made();
    return farm && farmResults(read().answers.question, farm.model, farm.values, localFormat);
  });
  const grey = createMemo((): ReadonlyMap<FigureKey, string> => {
    const farm = made();
    return farm === undefined ? new Map() : greyFigures(read().answers, farm.model, farm.values, localFormat);
  });
  return {
    template,
    read,
    results,
    grey,
    file: () => {
      const farm = made();
      if (farm === undefined) return undefined;
      const text = writeTable(newTableFile(farm.model.sheet, modelTable), farm.model.sheet);
      return new File([text], farmFileName(read().answers.name), { type: 'text/csv' });
    },
  };
}
