import type { Content } from '../content';

/** The cells that a content's formula names; none for an input. */
export function readsOf(content: Content | undefined): readonly number[] {
  return content === undefined || content.kind === 'input' ? [] : content.reads;
}
