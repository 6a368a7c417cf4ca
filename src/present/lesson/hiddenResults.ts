import { textFigures } from '../../model/inText/textFigure';
import type { Model } from '../../model/model';
import { varying } from '../numbers/varying';
import { hiddenKey } from './hiddenKey';
import type { Lesson } from './steps';

/** The results that a text tells, each in the plan that it tells of, or in all where they do not differ. */
function toldIn(model: Model, text: string, differing: ReadonlySet<number>): string[] {
  return textFigures(model, text).flatMap(({ plan, entries }) =>
    entries.flatMap((cell) =>
      differing.has(cell) ? hiddenKey(plan, cell) : model.plans.map((_plan, other) => hiddenKey(other, cell)),
    ),
  );
}

/**
 * The results of a lesson that a class has not been told yet: every calculated entry in every plan, but for those that
 * the answers of the opened steps tell. Once all steps are open nothing is hidden.
 * @param opened indices of steps
 */
export function hiddenResults(model: Model, { steps }: Lesson, opened: ReadonlySet<number>): ReadonlySet<string> {
  if (steps.every((_step, i) => opened.has(i))) return new Set();
  const calculated = model.plans.flatMap(({ contents }, plan) =>
    contents.flatMap((content, cell) => (content.kind === 'calculated' ? hiddenKey(plan, cell) : [])),
  );
  const differing = varying(
    model,
    model.plans.map((_plan, plan) => plan),
  );
  const told = new Set(steps.flatMap(({ answer }, i) => (opened.has(i) ? toldIn(model, answer, differing) : [])));
  return new Set(calculated.filter((key) => !told.has(key)));
}
