import { wording } from '../../language/wording';
import { exact } from '../../core/exact';
import { decimal, type Decimal } from '../../core/number';
import { problem, type Problem } from '../../core/problem';
import { noUnit, parseUnit, type Unit } from '../../core/unit';
import { checkFormula, type CheckedFormula, type Scope } from '../../formula/check';
import { evaluate } from '../../formula/evaluate';
import { namesIn, type Expression } from '../../formula/expression';
import { givenBy } from '../../formula/given';
import { parse } from '../../formula/parse';
import { nounsIn, scopeOf } from '../change/formulaScope';
import { cellNamed, type Model } from '../model';
import type { Values } from '../values';
import { textParts, type TextPart } from './textParts';

type FigurePart = Extract<TextPart, { kind: 'figure' }>;

/** A figure of a text that has been checked against the model. */
export interface TextFigure {
  /** Index of the plan whose value it is. */
  readonly plan: number;
  /** The unit that it is in; undefined where it is true or false. */
  readonly unit: Unit | undefined;
  /** Whether the unit stands behind the number. */
  readonly withUnit: boolean;
  /** Whether it is what its step asks for. */
  readonly isAnswer: boolean;
  /** The entry that it shows, where it is nothing but one. */
  readonly entry: number | undefined;
  /** The entries that it is made from. */
  readonly entries: readonly number[];
  /** Its value, NaN where it has none; a truth is 1 or 0. */
  readonly value: (values: readonly Values[]) => Decimal;
}

const unknown = decimal(NaN);

/** The words that may stand behind a formula, besides a plan and a unit. */
const withItsUnit = 'unit';
const answer = 'answer';

interface Ways {
  readonly plan: number;
  readonly unit: Unit | undefined;
  readonly withUnit: boolean;
  readonly isAnswer: boolean;
}

function wayFault(way: string): Problem {
  const fix = wording`Write the name of a plan, a unit, “${withItsUnit}” or “${answer}”.`;
  return problem('text-way', wording`not known behind a figure: ${way}. ${fix}`, { text: way });
}

function waysOf(model: Model, texts: readonly string[]): Ways | Problem {
  let ways: Ways = { plan: 0, unit: undefined, withUnit: false, isAnswer: false };
  for (const text of texts) {
    const plan = model.plans.findIndex(({ name }) => name === text);
    if (plan >= 0) ways = { ...ways, plan };
    else if (text === withItsUnit) ways = { ...ways, withUnit: true };
    else if (text === answer) ways = { ...ways, isAnswer: true };
    else {
      const unit = parseUnit(text, nounsIn(model));
      if ('code' in unit || text === '') return wayFault(text);
      ways = { ...ways, unit, withUnit: true };
    }
  }
  return ways;
}

/** The unit of a formula by itself: that of the entry where it is no more than a name, else the one that it yields. */
function unitOf(model: Model, expression: Expression, scope: Scope): Unit | Problem {
  const cell = expression.kind === 'name' ? cellNamed(model, expression.name) : undefined;
  if (cell?.unit !== undefined) return cell.unit;
  const given = givenBy(expression, scope);
  if ('code' in given) return given;
  return given.kind === 'truth' ? noUnit : parseUnit(given.unitText, nounsIn(model));
}

function valueOf({ node }: CheckedFormula, plan: number): TextFigure['value'] {
  const fail = (): void => undefined;
  return (values) => evaluate(node, { arithmetic: exact, cell: (id) => values[plan]?.numbers[id] ?? unknown, fail });
}

/** A figure in a text, ready to be worked out; or what is wrong with it. */
export function textFigure(model: Model, { formula, ways: texts }: FigurePart): TextFigure | Problem {
  const expression = parse(formula);
  if ('code' in expression) return expression;
  const ways = waysOf(model, texts);
  if ('code' in ways) return ways;
  const scope = scopeOf(model, model.plans[ways.plan]!);
  const unit = ways.unit ?? unitOf(model, expression, scope);
  if ('code' in unit) return unit;
  const checked = checkFormula(expression, unit, scope);
  if ('code' in checked) return checked;
  const entries = [...namesIn(expression)].flatMap((name) => model.ids.get(name) ?? []);
  return {
    ...ways,
    unit: checked.kind === 'truth' ? undefined : unit,
    entry: expression.kind === 'name' ? entries[0] : undefined,
    entries,
    value: valueOf(checked, ways.plan),
  };
}

/** The figures of a text that can be worked out, in its order. */
export function textFigures(model: Model, text: string): TextFigure[] {
  return textParts(text).flatMap((part) => {
    const figure = part.kind === 'figure' ? textFigure(model, part) : undefined;
    return figure === undefined || 'code' in figure ? [] : [figure];
  });
}
