import { createMemo, For, Show, type Accessor, type JSX } from 'solid-js';
import { exportTable } from '../../files/exportTable';
import type { Question } from '../../model/response';
import type { SpiderLine } from '../../study/spider';
import { drawnHeights } from '../breakeven/drawn';
import type { LinesDrawing } from '../chart/labelledLines';
import { Behind } from '../finding/Behind';
import { createWork } from '../finding/betterAnswers';
import { LineKey } from '../finding/LineKey';
import { LinesChart } from '../finding/LinesChart';
import { sentences, textOf } from '../finding/phrase';
import { FindingText } from '../finding/FindingText';
import { Said } from '../finding/Said';
import { here } from '../here';
import { HowWorked } from '../method/HowWorked';
import { printedUnit } from '../printedUnit';
import { download } from '../saving';
import type { Choice } from '../screen';
import { Link } from '../words';
import type { ShownBar } from './bars';
import type { Asked } from './finding';
import { spiderLines, topsOf, type FoundLines, type SpiderAsk } from './spiderLines';
import { spiderEntries, spiderRows } from './spiderTable';
import { slopeText, spiderTold } from './spiderTold';

interface SpiderProps {
  readonly question: Question;
  readonly asked: Asked;
  /** The tornado's bars, once all are there; undefined until then. */
  readonly bars: readonly ShownBar[] | undefined;
  readonly choice: Choice;
  readonly inSight: Accessor<boolean>;
  readonly goTo: (cell: number) => void;
}

interface Request extends SpiderAsk {
  readonly asked: Asked;
}

function sameRequest(a: Request | undefined, b: Request | undefined): boolean {
  const ids = (one: Request | undefined): string => (one?.levers ?? []).map(({ cell }) => cell.id).join();
  return a?.question === b?.question && ids(a) === ids(b);
}

/** Spider lines: a result against the change of the inputs with the longest bars, in per cent of today. */
export function Spider(props: SpiderProps): JSX.Element {
  const request = createMemo(
    (): Request | undefined => {
      return props.bars && { question: props.question, asked: props.asked, ...topsOf(props.bars) };
    },
    undefined,
    { equals: sameRequest },
  );
  const worked = createWork(
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
      <Show
        when={answer()}
        fallback={
          <p class="quiet wait" role="status">
            Working out the lines …
          </p>
        }>
        {(known) => <Lines request={known().of} found={known().found} goTo={props.goTo} />}
      </Show>
      <HowWorked choice={props.choice} entry="spider" />
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
  const told = createMemo(() => spiderTold(props.request.asked, lines(), props.request.atZero, here));
  const unit = (): string => printedUnit(props.request.asked.result.unitText);
  const caption = (): string => {
    const { result, of } = props.request.asked;
    const whose = of.kind === 'difference' ? 'B − A' : '';
    return [result.label, whose, unit()].filter(Boolean).join(', ');
  };
  return (
    <>
      <Said>
        <FindingText main={told().main} more={told().more} />
      </Said>
      <Show when={lines().length > 0}>
        <LinesChart
          drawing={drawingOf(lines(), props.request.asked)}
          caption={caption()}
          label={textOf(sentences(told().main, told().more))}>
          <LineKey
            figures={['for each per cent', unit()].filter(Boolean).join(', ')}
            lines={lines().map((line, place) => ({
              label: props.request.asked.nameOf(line.lever.cell),
              leading: place === 0,
              figure: slopeText(line, props.request.asked, here),
              goTo: () => props.goTo(line.lever.cell.id),
            }))}
          />
        </LinesChart>
        <SpiderTable {...props} caption={caption()} />
      </Show>
    </>
  );
}

function drawingOf(lines: readonly SpiderLine[], { base, of, nameOf }: Asked): LinesDrawing {
  const drawn = lines.map(({ lever, places }, place) => ({
    label: nameOf(lever.cell),
    leading: place === 0,
    points: places.map(({ change, result }) => ({ x: change.toNumber(), y: result.toNumber() })),
  }));
  const changes = drawn.flatMap(({ points }) => points.map(({ x }) => x));
  const today = base.toNumber();
  const heights = drawnHeights(
    drawn.map(({ points }) => points),
    [today],
  );
  const zero = of.kind === 'difference' && heights.min < 0 && heights.max > 0 ? [0] : [];
  return {
    lines: drawn,
    across: { min: Math.min(0, ...changes), max: Math.max(0, ...changes), title: 'change from today', tickAfter: ' %' },
    heights,
    today: { x: 0, text: 'today' },
    levels: [today, ...zero],
    rings: [],
  };
}

function SpiderTable(props: LinesProps & { caption: string }): JSX.Element {
  const rows = createMemo(() => spiderRows(props.found.lines, props.request.asked, here));
  const save = (): void =>
    download('per-cent.csv', exportTable(spiderEntries(props.found.lines, props.request.asked, props.caption)));
  return (
    <Behind summary="The same lines as a table">
      <div class="table-room" role="region" aria-label="Table of the lines" tabindex="0">
        <table>
          <caption>
            {props.caption}
            {props.found.exact ? '' : ' (being worked out exactly …)'}
          </caption>
          <thead>
            <tr>
              <th scope="col">entry</th>
              <th scope="col">change</th>
              <th scope="col">number</th>
              <th scope="col">result</th>
            </tr>
          </thead>
          <tbody>
            <For each={rows()}>
              {(row) => (
                <tr>
                  <th scope="row">
                    <Link onPress={() => props.goTo(row.cell.id)}>{row.name}</Link>
                  </th>
                  <td>{row.change}</td>
                  <td>{row.input}</td>
                  <td>{row.result ?? 'cannot be computed'}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
      <p>
        <button type="button" class="word" disabled={!props.found.exact} onClick={save}>
          Save this table as CSV
        </button>
      </p>
    </Behind>
  );
}
