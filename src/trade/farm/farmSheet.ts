import { ownSources } from '../../model/change/sources';
import { withFields } from '../../model/change/rows';
import { field, type Sheet } from '../../model/sheet';
import type { FarmAnswers } from './answers';
import { askedFigures, type AskedFigure } from './askedFigures';
import { farmMeasures } from './farmMeasures';
import { growingFarm, withBoardsCounted, withoutHire, withTimes } from './growingFarm';
import { keptOf, rangeOf } from './rangeRule';
import { withFigure, withoutEntries } from './sheetEdits';
import { farmAbout, farmTitle } from './wording';

/** The template of plugs without the sample's own limit to what a plug may cost. */
function plugFarm(template: Sheet): Sheet {
  return withoutEntries(template, ['most_per_plant', 'cost_allowed']);
}

function farmWith(template: Sheet, { question }: FarmAnswers): Sheet {
  if (question === 'plug') return plugFarm(template);
  const farm = growingFarm(template);
  return question === 'hire' ? farm : withoutHire(farm);
}

const times = ['timeToday', 'nurseryTime', 'finishingTime'];

function withAnswer(sheet: Sheet, { key, entry, rule }: AskedFigure, answers: FarmAnswers, source: string): Sheet {
  const given = answers.figures.get(key);
  if (given === undefined || times.includes(key)) return sheet;
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

/**
 * A farm's own model as text: the template with each figure that was given in the place of its own, with a range by
 * `rangeOf` and a source of that day. A figure that was skipped keeps the template's number and source; hours of the
 * staff, promised hours and limits are then 0, and a crop takes as long in both plans.
 * @param template the shipped model of transplanters for `hire` and `density`, that of plugs for `plug`
 */
export function farmSheet(template: Sheet, answers: FarmAnswers, day: Date): Sheet {
  const farm = farmWith(farmMeasures(template, answers), answers);
  const source = ownSources.entered(day);
  const filled = askedFigures[answers.question].reduce(
    (sheet, asked) => withAnswer(sheet, asked, answers, source),
    withTitle(farm, answers),
  );
  return answers.question === 'plug' ? filled : withTimes(filled, answers, day);
}
