import { wording } from '../../language/wording';

/** What is said of figures in a file’s texts. */
export const toldTexts = {
  /** @param fault a sentence of its own, with its full stop */
  notAFigure: (written: string, fault: string) => wording`${written} stands as it is written: ${fault}`,
} as const;
