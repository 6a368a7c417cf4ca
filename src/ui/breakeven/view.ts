import type { Lines } from './lines';
import type { Looked } from './quickStudy';

/** What is looked at: both plans as lines, their difference, or the only plan. */
export type View = 'both' | 'difference' | 'alone';

/** The view from what was kept of the choice. */
export function viewOf(kept: string, lines: Pick<Lines, 'against'>): View {
  if (lines.against === undefined) return 'alone';
  return kept === 'difference' ? 'difference' : 'both';
}

/** The lines drawn, and the one that the answer is about. */
export function lookedAtIn(view: View): Looked {
  if (view === 'difference') return { shown: ['difference'], leading: 'difference' };
  return view === 'both' ? { shown: ['against', 'plan'], leading: 'difference' } : { shown: ['plan'], leading: 'plan' };
}
