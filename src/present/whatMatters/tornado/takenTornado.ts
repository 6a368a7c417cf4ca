import { apart } from '../../picture/apart';
import { cut } from '../../picture/labelledLines';
import { fontOf, type ChartInk } from '../../picture/ink';
import { keyBox, keyText } from '../../picture/keySigns';
import type { Plot } from '../../picture/plot';
import type { RowsPicture } from '../../picture/rowsPicture';
import type { KeyItem, TakenParts } from '../../picture/takenPicture';
import { commonTexts } from '../../text/commonTexts';
import type { Format } from '../../text/numberFormat';
import type { ShownBar } from './bars';
import { layBars } from './barTexts';
import { colourOf, tornadoPicture, type Tornado } from './picture';
import type { TornadoRow } from './rows';
import type { TornadoSubject } from './sentences';
import { tornadoTexts } from './texts';

/** What the bars that are taken out are made from. */
interface TakenTornado extends Pick<Tornado, 'letter'> {
  readonly bars: readonly ShownBar[];
  readonly rows: readonly TornadoRow[];
  readonly subject: TornadoSubject;
  /** Decimals of the results. */
  readonly decimals: number;
}

/** Pixels from the middle of a bar up to the name of its entry. */
const above = 20;

/** Writes the name above each bar, with how far the bar moves the result at the end of its line. */
function names({ pen, width, y }: Plot, rows: readonly TornadoRow[], ink: ChartInk): void {
  pen.font = fontOf(ink);
  pen.textBaseline = 'middle';
  rows.forEach(({ name, swing, flips, percentiles }, row) => {
    const at = y(row) - above;
    const [moves, mark] = [swing ?? commonTexts.unknown, percentiles ? '*' : ''];
    const flipping = flips ? ` ${tornadoTexts.flips}` : '';
    pen.fillStyle = ink.text;
    pen.textAlign = 'right';
    pen.fillText(apart(moves), width, at);
    pen.textAlign = 'left';
    const room = width - ink.measure(`${moves}${mark}${flipping}`) - 2 * ink.size;
    const shown = cut(name, room, ink.measure) + mark;
    pen.fillText(apart(shown), 0, at);
    pen.fillStyle = ink.fault;
    if (flips) pen.fillText(tornadoTexts.flips, ink.measure(`${shown} `), at);
  });
}

function keyOf({ rows, letter }: TakenTornado, ink: ChartInk): KeyItem[] {
  const colour = colourOf(letter, ink);
  return [
    keyBox(tornadoTexts.keyLow, colour, colour),
    keyBox(tornadoTexts.keyHigh, ink.hatched(colour), colour),
    ...(rows.some(({ flips }) => flips) ? [keyText(`${tornadoTexts.flips}: ${tornadoTexts.keyFlips}`)] : []),
    ...(rows.some(({ percentiles }) => percentiles) ? [keyText(tornadoTexts.keyPercentiles)] : []),
  ];
}

/** The bars as they are taken out: with the names that on the page lie over the picture as links. */
export function tornadoParts(taken: TakenTornado, format: Format): TakenParts {
  const { bars, rows, subject, decimals, letter } = taken;
  const today = subject.base.toNumber();
  const draw = (ink: ChartInk, width: number): RowsPicture => {
    const laid = layBars(bars, rows, today, width, ink.measure);
    const todayText = format.fixed(subject.base, decimals);
    const picture = tornadoPicture({ bars, laid, today, todayText, letter }, ink, width, format);
    return {
      ...picture,
      over: (plot) => {
        picture.over(plot);
        names(plot, rows, ink);
      },
    };
  };
  return { key: (ink) => keyOf(taken, ink), draw };
}
