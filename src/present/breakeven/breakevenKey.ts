import type { ChartInk } from '../picture/ink';
import { keyLine } from '../picture/keySigns';
import type { KeyItem } from '../picture/takenPicture';
import type { LineName } from '../results/resultLines';
import { commonTexts } from '../text/commonTexts';
import { lineInKey } from './lineTexts';
import { dashes } from './picture';
import type { BreakevenContext } from './sentences';

/** The bracket under the axis that marks the range of the input. */
function rangeItem(ink: ChartInk): KeyItem {
  const room = 20;
  return {
    text: commonTexts.itsRange,
    room,
    sign: (pen, left, middle) => {
      pen.strokeStyle = ink.text;
      pen.lineWidth = 2;
      pen.beginPath();
      pen.moveTo(left, middle - 4);
      pen.lineTo(left, middle + 4);
      pen.lineTo(left + room, middle + 4);
      pen.lineTo(left + room, middle - 4);
      pen.stroke();
    },
  };
}

/** The key of the picture that is taken out. */
export function breakevenKey(matter: BreakevenContext, shown: readonly LineName[], ink: ChartInk): KeyItem[] {
  const colour = (name: LineName): string => (name === 'against' ? ink.planA : ink.planB);
  const lines = shown.map((name) => keyLine(lineInKey(matter, name), colour(name), 2.5, dashes[name]));
  const range = matter.moved.range === undefined ? [] : [rangeItem(ink)];
  return [...(shown.length > 1 ? lines : []), ...range];
}
