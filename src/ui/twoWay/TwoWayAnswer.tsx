import { createMemo, type JSX } from 'solid-js';
import type { Cell } from '../../model/cell';
import { surfaceOf } from '../../study/grid';
import { betterWay } from '../../trade/betterWay';
import { capital } from '../breakeven/answer';
import { Behind } from '../finding/Behind';
import { sentences, textOf } from '../finding/phrase';
import { FindingText } from '../finding/FindingText';
import { spoken } from '../finding/spoken';
import { here } from '../here';
import { edgeText } from './edgeText';
import { HeatChart } from './HeatChart';
import type { HeatDrawing } from './heatPicture';
import { HeatTableView, type TableAsk } from './HeatTableView';
import type { Look, Pair } from './look';
import type { Moving } from './pair';
import { roundPlaces } from './places';
import { withUnit } from './table';
import { told, type Speech } from './told';

/** On which side of the target a result is worse; below where nothing says. */
function worseSide(result: Cell): HeatDrawing['worse'] {
  return betterWay(result) === 'lower' ? 'above' : 'below';
}

/** The heat picture of two inputs: hatched below the target, of a cost above it. */
function drawingOf({ pair, grid, bands, paths }: Look, worse: HeatDrawing['worse'], targetText: string): HeatDrawing {
  const [x, y] = [pair.across.lever.base.toNumber(), pair.down.lever.base.toNumber()];
  return {
    grid,
    bands,
    worse,
    paths,
    levelText: pair.target.isZero() ? 'breakeven' : targetText,
    marks: [{ x, y, text: 'today', kind: 'today' }],
    acrossTitle: withUnit(pair.across.lever.cell),
  };
}

function tableAsk(pair: Pair, result: Cell, caption: string, worseText: string, fileName: string): TableAsk {
  const worse = worseSide(result);
  const along = ({ lever: { cell, base }, range }: Moving): TableAsk['across'] => ({
    cell,
    today: base,
    places: roundPlaces(range, base),
  });
  return {
    surface: surfaceOf(pair.question, pair.across.lever, pair.down.lever),
    across: along(pair.across),
    down: along(pair.down),
    result,
    caption,
    isWorse: (value) => value.lt(pair.target) === (worse === 'below'),
    worseText,
    fileName,
  };
}

interface TwoWayAnswerProps {
  readonly look: Look;
  readonly speech: Speech;
  /** The name of the model's file. */
  readonly file: string;
}

/** What two inputs do together, in words, as a picture and as a table. */
export function TwoWayAnswer(props: TwoWayAnswerProps): JSX.Element {
  // A better look at the same pair draws the picture anew, and leaves the exact table as it is.
  const look = createMemo(() => props.look);
  const pair = createMemo(() => look().pair);
  const result = (): Cell => props.speech.result;
  const words = createMemo(() => told(look(), props.speech, here));
  const targetText = (): string => (pair().target.isZero() ? '0' : spoken(pair().target, result().unit, here));
  const caption = (): string => withUnit({ label: textOf(capital(props.speech.subject)), unitText: result().unitText });
  const worseText = (): string =>
    worseSide(result()) === 'below' ? `below ${targetText()}` : `${targetText()} or more`;
  const drawing = createMemo(() => drawingOf(look(), worseSide(result()), targetText()));
  const fileName = (): string => `${props.file.replace(/\.csv$/i, '')} two inputs.csv`;
  const table = createMemo(() => tableAsk(pair(), result(), caption(), worseText(), fileName()));
  return (
    <>
      <div class="heat-said">
        <FindingText main={words().main} more={words().more} />
      </div>
      <HeatChart
        drawing={drawing()}
        label={textOf(sentences(words().main, words().more))}
        what={caption()}
        downTitle={withUnit(pair().down.lever.cell)}
        worseText={worseText()}
        write={(value) => edgeText(look().bands, value, result().unit, here)}
      />
      <Behind summary="The same numbers as a table">
        <HeatTableView ask={table()} />
      </Behind>
    </>
  );
}
