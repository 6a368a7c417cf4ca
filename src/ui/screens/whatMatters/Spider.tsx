import { createMemo, Show, type Accessor, type JSX } from 'solid-js';
import type { Question } from '../../../model/response';
import type { SpiderLine } from '../../../study/spider';
import { Waiting } from '../../kit/sections/Waiting';
import { visibleHeights } from '../../../present/breakeven/curve/visibleRange';
import type { LinesDrawing } from '../../../present/picture/labelledLines';
import { NumbersBehind } from '../../kit/sections/NumbersBehind';
import { HeadedTable } from '../../kit/tables/HeadedTable';
import { createProgressive } from '../../kit/background/progressive';
import { LineKey } from '../../kit/charts/LineKey';
import { LinesChart } from '../../kit/charts/LinesChart';
import { sentences, textOf } from '../../../present/text/phrase';
import { AnswerText } from '../../kit/sections/AnswerText';
import { LiveText } from '../../kit/sections/LiveText';
import { localFormat } from '../../app/preferences/localFormat';
import { MethodLink } from '../../kit/method/MethodLink';
import type { Choice } from '../../app/screenProps';
import type { DataTable } from '../../../present/table/dataTable';
import { tornadoUnit } from '../../../present/whatMatters/tornado/rows';
import type { ShownBar } from '../../../present/whatMatters/tornado/bars';
import type { TornadoSubject } from '../../../present/whatMatters/tornado/sentences';
import { spiderLines, topsOf, type FoundLines, type SpiderRequest } from '../../../present/whatMatters/spider/lines';
import { everySpiderRow, spiderRows, spiderTable } from '../../../present/whatMatters/spider/table';
import { slopeText, spiderSentence } from '../../../present/whatMatters/spider/sentences';
import {
  spiderCaption,
  spiderFigures,
  spiderTableCaption,
  spiderTexts,
} from '../../../present/whatMatters/spider/texts';
import { commonTexts } from '../../../present/text/commonTexts';

interface SpiderProps {
  readonly question: Question;
  readonly subject: TornadoSubject;
  /** The tornado's bars; undefined until all of them are computed. */
  readonly bars: readonly ShownBar[] | undefined;
  readonly choice: Choice;
  readonly inSight: Accessor<boolean>;
  readonly goTo: (cell: number) => void;
}

interface Request extends SpiderRequest {
  readonly subject: TornadoSubject;
}

function sameRequest(a: Request | undefined, b: Request | undefined): boolean {
  const ids = (one: Request | undefined): string => (one?.levers ?? []).map(({ cell }) => cell.id).join();
  return a?.question === b?.question && ids(a) === ids(b);
}

/** Spider lines: a result against changes, in per cent of today, of the inputs with the longest bars. */
export function Spider(props: SpiderProps): JSX.Element {
  const request = createMemo(
    (): Request | undefined => {
      return props.bars && { question: props.question, subject: props.subject, ...topsOf(props.bars) };
    },
    undefined,
    { equals: sameRequest },
  );
  const worked = createProgressive(
    () => request(),
    () => props.inSight(),
    (ask) => (ask === undefined ? [].values() : spiderLines(ask)),
  );
  const answer = createMemo(() => {
    const known = worked();
    return known?.of === undefined ? undefined : { of: known.of, found: known.found };
  });
  return (
    <>
      <Show when={answer()} fallback={<Waiting class="quiet wait">{commonTexts.workingLines}</Waiting>}>
        {(known) => <Lines request={known().of} found={known().found} goTo={props.goTo} />}
      </Show>
      <MethodLink choice={props.choice} entry="spider" />
    </>
  );
}

interface LinesProps {
  readonly request: Request;
  readonly found: FoundLines;
  readonly goTo: (cell: number) => void;
}

function Lines(props: LinesProps): JSX.Element {
  const lines = (): readonly SpiderLine[] => props.found.lines;
  const sentence = createMemo(() => spiderSentence(props.request.subject, lines(), props.request.atZero, localFormat));
  const caption = (): string => spiderCaption(props.request.subject);
  const everyPlace = (): DataTable =>
    spiderTable(
      everySpiderRow(lines(), props.request.subject, localFormat),
      caption(),
      tornadoUnit(props.request.subject),
    );
  return (
    <>
      <LiveText>
        <AnswerText main={sentence().main} more={sentence().more} />
      </LiveText>
      <Show when={lines().length > 0}>
        <LinesChart
          drawing={drawingOf(lines(), props.request.subject)}
          caption={caption()}
          table={() => everyPlace()}
          waits={!props.found.exact}
          label={textOf(sentences(sentence().main, sentence().more))}>
          <LineKey
            figures={spiderFigures(props.request.subject)}
            lines={lines().map((line, place) => ({
              label: props.request.subject.nameOf(line.lever.cell),
              leading: place === 0,
              figure: slopeText(line, props.request.subject, localFormat),
              goTo: () => props.goTo(line.lever.cell.id),
            }))}
          />
        </LinesChart>
        <SpiderTable {...props} caption={caption()} />
      </Show>
    </>
  );
}

function drawingOf(lines: readonly SpiderLine[], { base, of, nameOf }: TornadoSubject): LinesDrawing {
  const drawn = lines.map(({ lever, places }, place) => ({
    label: nameOf(lever.cell),
    leading: place === 0,
    points: places.map(({ change, result }) => ({ x: change.toNumber(), y: result.toNumber() })),
  }));
  const changes = drawn.flatMap(({ points }) => points.map(({ x }) => x));
  const today = base.toNumber();
  const heights = visibleHeights(
    drawn.map(({ points }) => points),
    [today],
  );
  const zero = of.kind === 'difference' && heights.min < 0 && heights.max > 0 ? [0] : [];
  return {
    lines: drawn,
    across: {
      min: Math.min(0, ...changes),
      max: Math.max(0, ...changes),
      title: spiderTexts.across,
      tickAfter: spiderTexts.tickAfter,
    },
    heights,
    today: { x: 0, text: commonTexts.today },
    levels: [today, ...zero],
    rings: [],
  };
}

function SpiderTable(props: LinesProps & { caption: string }): JSX.Element {
  const rows = createMemo(() => spiderRows(props.found.lines, props.request.subject, localFormat));
  const table = createMemo(() =>
    spiderTable(rows(), spiderTableCaption(props.caption, props.found.exact), tornadoUnit(props.request.subject)),
  );
  return (
    <NumbersBehind summary={spiderTexts.table}>
      <HeadedTable
        label={spiderTexts.tableRegion}
        table={table()}
        goTo={(row) => props.goTo(rows()[row]!.cell.id)}
        waits={!props.found.exact}
      />
    </NumbersBehind>
  );
}
