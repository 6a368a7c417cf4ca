import type { Cell } from '../../model/cell';
import type { ChartInk } from '../picture/ink';
import { keyBox, keyLine, keyText } from '../picture/keySigns';
import type { KeyItem } from '../picture/takenPicture';
import { withUnit } from '../text/withUnit';
import { setHead, type DrawSet } from './drawSets';
import type { SpreadStyle } from './spreadPicture';
import { spreadTexts } from './texts';

/** What the picture of the draws is called where it is taken out. */
export function spreadTitle(result: Cell, style: SpreadStyle): string {
  return `${withUnit(result)}: ${spreadTexts.shares[style]}, %`;
}

/** The key of the picture that is taken out. @param sets none where there is one set only */
export function spreadKey(sets: readonly DrawSet[], style: SpreadStyle, ink: ChartInk): KeyItem[] {
  const items = sets.map((set) => {
    const isB = set.letter === 'B';
    const colour = isB ? ink.planB : ink.planA;
    if (style === 'curve') return keyLine(setHead(set), colour, 2.5, isB ? [8, 5] : []);
    return keyBox(setHead(set), isB ? ink.hatched(colour) : colour, colour);
  });
  return [...items, keyText(spreadTexts.box)];
}
