import { Decimal, numberToText } from '../../core/number';
import { buildModel } from '../../model/buildModel';
import { ownSources } from '../../model/change/sources';
import { withFields } from '../../model/change/rows';
import { edit } from '../../model/edit';
import type { FormulaReader } from '../../model/formulaReader';
import { cellNamed, type Model } from '../../model/model';
import { field, type Sheet } from '../../model/sheet';
import { evaluatePlan } from '../../model/values';
import type { FarmAnswers } from './answers';
import { askedFigures, type AskedFigure } from './askedFigures';
import { farmMeasures } from './farmMeasures';
import { growingFarm, withBoardsCounted, withoutHire, withTimes } from './growingFarm';
import { keptOf, rangeOf } from './rangeRule';
import { withEntryFields, withFigure, withoutEntries } from './sheetEdits';
import { farmAbout, farmTitle, freeHoursSource, openSources } from './wording';

/** A sheet that says of numbers which stand for “automatic” or “as usual” that they are left open. */
function withDefaultsSaid(sheet: Sheet): Sheet {
  const single = withEntryFields(sheet, 'plugs_per_plant', { source: openSources.onePlug });
  return withEntryFields(single, 'batch_by_hand', { source: openSources.largestBatch });
}

/** The template of plugs without the sample's own limit to what a plug may cost. */
function plugFarm(template: Sheet): Sheet {
  return withDefaultsSaid(withoutEntries(template, ['most_per_plant', 'cost_allowed']));
}

function farmWith(template: Sheet, { question }: FarmAnswers): Sheet {
  if (question === 'plug') return plugFarm(template);
  const farm = withDefaultsSaid(growingFarm(template));
  return question === 'hire' ? farm : withoutHire(farm);
}

/** Keys of what is put in by itself. */
const apart = ['timeToday', 'nurseryTime', 'finishingTime', 'freeHours'];

function withAnswer(sheet: Sheet, { key, entry, rule }: AskedFigure, answers: FarmAnswers, source: string): Sheet {
  const given = answers.figures.get(key);
  if (given === undefined || apart.includes(key)) return sheet;
  if (key === 'nurseryBoards') return withBoardsCounted(sheet, given, source);
  const value = rule === 'loss' ? keptOf(given) : given;
  const unit = sheet.rows.find((row) => field(row, 'name') === entry)?.fields.get('unit') ?? '';
  return withFigure(sheet, entry, value, source, rangeOf(rule, given, unit));
}

function withTitle(sheet: Sheet, { question, name }: FarmAnswers): Sheet {
  const title = sheet.rows.find((row) => field(row, 'name') === '');
  if (title === undefined) return sheet;
  return withFields(sheet, title.row, { label: farmTitle(question, name), note: farmAbout(question) });
}

/** Hours are written to so many decimals, rounded up: the present staff cover all of today's work. */
const hourDecimals = 2;

/** A model in which the present staff have the hours of today's work, and those that are free. */
function withStaff(model: Model, { figures }: FarmAnswers, day: Date): Model {
  const [today] = model.plans;
  const staff = cellNamed(model, 'staff_hours');
  const needed = cellNamed(model, 'hours_needed');
  if (today === undefined || staff === undefined || needed === undefined) return model;
  const hours = evaluatePlan(today).numbers[needed.id];
  if (hours?.isFinite() !== true) return model;
  const free = figures.get('freeHours');
  const all = hours.toDecimalPlaces(hourDecimals, Decimal.ROUND_UP).plus(free ?? 0);
  const source =
    free === undefined ? openSources.noFreeHours : freeHoursSource(ownSources.entered(day), numberToText(free));
  return edit(model, { row: staff.row, column: 'formula', text: numberToText(all), source }).model;
}

/**
 * A farm's own model, checked: that of `farmSheet`, with hours of the present staff that cover today's work.
 * @param reader formulas of the template that have been read already, which takes most of the time
 */
export function createFarm(template: Sheet, answers: FarmAnswers, day: Date, reader?: FormulaReader): Model {
  const model = buildModel(farmSheet(template, answers, day), undefined, reader);
  return answers.question === 'plug' ? model : withStaff(model, answers, day);
}

/**
 * A farm's own model as text: the template with each figure that was given in the place of its own, with a range by
 * `rangeOf` and a source of that day, unless it has one of its own. A figure that was skipped keeps the template's
 * number and source; hours of the staff, promised hours, the house and limits elsewhere are then 0, and a crop takes as
 * long in both plans.
 * @param template the shipped model of transplanters for `hire` and `density`, that of plugs for `plug`
 */
function farmSheet(template: Sheet, answers: FarmAnswers, day: Date): Sheet {
  const farm = farmWith(farmMeasures(template, answers), answers);
  const source = ownSources.entered(day);
  const filled = askedFigures[answers.question].reduce(
    (sheet, asked) => withAnswer(sheet, asked, answers, answers.sources?.get(asked.key) ?? source),
    withTitle(farm, answers),
  );
  return answers.question === 'plug' ? filled : withTimes(filled, answers, day);
}
