import { decimal } from '../../src/core/number';
import { lever } from '../../src/model/view';
import { breakeven, type BreakevenPoints } from '../../src/study/breakeven';
import { curveAlong, type Curve } from '../../src/study/curve';
import { asked, idOf, modelOf } from '../model/table';

/** A formula of x as a curve, through the whole engine. @param others lines of a written model that it names as well */
export function curveOf(formula: string, others: readonly string[] = []): Curve {
  const model = modelOf([...others, 'x: 1', `r: ${formula}`].join('\n'));
  if (model.faults.length > 0) throw new Error(model.faults[0]?.message);
  const question = asked(model, 'r');
  return curveAlong(question.response([lever(question.view, idOf(model, 'x'))!]));
}

/** Where a curve meets a target between two inputs. */
export function search(
  curve: Curve,
  from: string,
  to: string,
  target = '0',
  given: readonly string[] = [],
): BreakevenPoints {
  return breakeven(curve, { from: decimal(from), to: decimal(to) }, decimal(target), given.map(decimal));
}

/** What was found, as `2 up, 5 down, breaks 3` or `everywhere`. */
export function said({ crossings, breaks, holds }: BreakevenPoints): string {
  const parts = [
    ...crossings.map(({ value, direction }) => `${value.toString()} ${direction}`),
    ...(breaks.length > 0 ? [`breaks ${breaks.join(' ')}`] : []),
    ...(holds === null ? [] : [holds]),
  ];
  return parts.join(', ');
}
