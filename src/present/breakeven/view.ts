import type { ResultLines } from '../results/resultLines';
import type { LineSelection } from './curve/quickStudy';

/** What is looked at: both plans as lines, their difference, or the only plan. */
export type LineView = 'both' | 'difference' | 'alone';

/** The view from what was kept of the choice. */
export function lineViewOf(kept: LineView, lines: Pick<ResultLines, 'against'>): LineView {
  if (lines.against === undefined) return 'alone';
  return kept === 'difference' ? 'difference' : 'both';
}

/** The lines drawn, and the one that the answer is about. */
export function linesOfView(view: LineView): LineSelection {
  if (view === 'difference') return { shown: ['difference'], leading: 'difference' };
  return view === 'both' ? { shown: ['against', 'plan'], leading: 'difference' } : { shown: ['plan'], leading: 'plan' };
}
