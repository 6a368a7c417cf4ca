import type { TableRequest } from '../../../../present/heat/table';
import { createMemo, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import { surfaceOf } from '../../../../study/grid';
import { betterWay } from '../../../../trade/betterWay';
import { NumbersBehind } from '../../../kit/sections/NumbersBehind';
import { capital, sentences, textOf } from '../../../../present/text/phrase';
import { AnswerText } from '../../../kit/sections/AnswerText';
import { spoken } from '../../../../present/text/spokenNumber';
import { localFormat } from '../../../app/preferences/localFormat';
import { edgeText } from '../../../../present/heat/edgeText';
import { HeatChart } from '../../../kit/heat/HeatChart';
import type { HeatDrawing } from '../../../../present/heat/picture';
import { HeatTableView } from '../../../kit/heat/HeatTableView';
import type { PairSurfaces, Pair } from '../../../../present/breakeven/twoWay/surfaces';
import type { MovingInput } from '../../../../present/breakeven/twoWay/pair';
import { roundPlaces } from '../../../../present/breakeven/twoWay/places';
import { withUnit } from '../../../../present/text/withUnit';
import { twoWaySentences, type TwoWayContext } from '../../../../present/breakeven/twoWay/sentences';
import { twoWayTexts } from '../../../../present/breakeven/twoWay/texts';
import { commonTexts } from '../../../../present/text/commonTexts';

/** The side of the target on which a result is worse; below where nothing says otherwise. */
function worseSide(result: Cell): HeatDrawing['worse'] {
  return betterWay(result) === 'lower' ? 'above' : 'below';
}

/** The heat picture of two inputs: hatched below the target, or above it for a cost. */
function drawingOf(
  { pair, grid, bands, paths }: PairSurfaces,
  worse: HeatDrawing['worse'],
  targetText: string,
): HeatDrawing {
  const [x, y] = [pair.across.lever.base.toNumber(), pair.down.lever.base.toNumber()];
  return {
    grid,
    bands,
    worse,
    paths,
    levelText: pair.target.isZero() ? twoWayTexts.level : targetText,
    marks: [{ x, y, text: commonTexts.today, kind: 'today' }],
    acrossTitle: withUnit(pair.across.lever.cell),
  };
}

function tableAsk(pair: Pair, result: Cell, caption: string, worseText: string): TableRequest {
  const worse = worseSide(result);
  const along = ({ lever: { cell, base }, range }: MovingInput): TableRequest['across'] => ({
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
  };
}

interface TwoWayAnswerProps {
  readonly surfaces: PairSurfaces;
  readonly context: TwoWayContext;
}

/** The answer about two inputs: sentences, picture and table. */
export function TwoWayAnswer(props: TwoWayAnswerProps): JSX.Element {
  // A finer grid for the same question changes the picture, but not the exact table.
  const surfaces = createMemo(() => props.surfaces);
  const pair = createMemo(() => surfaces().pair);
  const result = (): Cell => props.context.result;
  const words = createMemo(() => twoWaySentences(surfaces(), props.context, localFormat));
  const targetText = (): string => (pair().target.isZero() ? '0' : spoken(pair().target, result().unit, localFormat));
  const caption = (): string =>
    withUnit({ label: textOf(capital(props.context.subject)), unitText: result().unitText });
  const worse = (): HeatDrawing['worse'] => worseSide(result());
  const worseText = (): string => twoWayTexts[worse() === 'below' ? 'below' : 'orMore'](targetText());
  const drawing = createMemo(() => drawingOf(surfaces(), worse(), targetText()));
  const table = createMemo(() => tableAsk(pair(), result(), caption(), worseText()));
  return (
    <>
      <div class="heat-said">
        <AnswerText main={words().main} more={words().more} />
      </div>
      <HeatChart
        drawing={drawing()}
        label={textOf(sentences(words().main, words().more))}
        what={caption()}
        downTitle={withUnit(pair().down.lever.cell)}
        worseText={worseText()}
        write={(value) => edgeText(surfaces().bands, value, result().unit, localFormat)}
      />
      <NumbersBehind summary={commonTexts.numbersAsTable}>
        <HeatTableView ask={table()} />
      </NumbersBehind>
    </>
  );
}
