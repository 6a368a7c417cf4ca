import type { LineName } from '../results/resultLines';
import type { BreakevenContext } from './sentences';

/** The name of a line in the key: `A Plugs`, `B Nursery first`. */
export function lineInKey({ subject }: Pick<BreakevenContext, 'subject'>, name: LineName): string {
  const against = subject.against ?? '';
  if (name === 'against') return `A ${against}`;
  return name === 'plan' ? `B ${subject.plan}` : `B ${subject.plan} less ${against}`;
}

/** The name of a line above its column of a table; for the only line, the result's label. */
export function lineHead({ subject }: Pick<BreakevenContext, 'subject'>, name: LineName): string {
  if (name === 'difference') return 'B − A';
  if (name === 'against') return `A ${subject.against ?? ''}`;
  return subject.against === undefined ? subject.result.label : `B ${subject.plan}`;
}
