import type { ResultLines } from '../results/resultLines';
import type { LineSelection } from './curve/quickStudy';

/** Which lines a breakeven shows: both plans, their difference, or the only plan. */
export type LineView = 'both' | 'difference' | 'alone';

/** The view by the choice that was kept, as far as the model allows it. */
export function lineViewOf(kept: LineView, lines: Pick<ResultLines, 'against'>): LineView {
  if (lines.against === undefined) return 'alone';
  return kept === 'difference' ? 'difference' : 'both';
}

/** The lines that are drawn, and the leading one, which the answer is about. */
export function linesOfView(view: LineView): LineSelection {
  if (view === 'difference') return { shown: ['difference'], leading: 'difference' };
  return view === 'both' ? { shown: ['against', 'plan'], leading: 'difference' } : { shown: ['plan'], leading: 'plan' };
}
