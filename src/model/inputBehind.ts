import type { Plan } from './model';

/** The input that a cell is in a plan: itself, or one that it names through entries which are nothing but a name. */
export function inputBehind(plan: Plan, cell: number): number | undefined {
  const content = plan.contents[cell];
  if (content?.kind === 'input') return cell;
  if (content?.kind !== 'calculated') return undefined;
  const bare = content.node.op === 'convert' ? content.node.of : content.node;
  return bare.op === 'cell' ? inputBehind(plan, bare.cell) : undefined;
}
