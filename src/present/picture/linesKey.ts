import type { ChartInk } from './ink';
import { keyLine } from './keySigns';
import { lineStyle, markOf, type LinesDrawing } from './labelledLines';
import type { KeyItem } from './takenPicture';

/** The key of a chart of lines that is taken out: each line as it is drawn, with its letter or number and its name. */
export function linesKey({ lines }: LinesDrawing, ink: ChartInk): KeyItem[] {
  return lines.map((line, place) => {
    const { colour, width, dash } = lineStyle(line, place);
    return keyLine(`${markOf(line, place)} ${line.label}`, ink[colour], width, dash);
  });
}
