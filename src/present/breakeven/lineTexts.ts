import { wording } from '../../language/wording';
import type { LineName } from '../results/resultLines';
import type { BreakevenContext } from './sentences';
import { commonTexts } from '../text/commonTexts';

/** The name of a line in the key: `A Plugs`, `B Nursery first`. */
export function lineInKey({ subject }: Pick<BreakevenContext, 'subject'>, name: LineName): string {
  const against = subject.against ?? '';
  if (name === 'against') return commonTexts.planOf('A', against);
  const plan = commonTexts.planOf('B', subject.plan);
  return name === 'plan' ? plan : wording`${plan} less ${against}`;
}

/** The name of a line above its column of a table; for the only line, the result's label. */
export function lineHead({ subject }: Pick<BreakevenContext, 'subject'>, name: LineName): string {
  if (name === 'difference') return commonTexts.secondLessFirst;
  if (name === 'against') return commonTexts.planOf('A', subject.against ?? '');
  return subject.against === undefined ? subject.result.label : commonTexts.planOf('B', subject.plan);
}
