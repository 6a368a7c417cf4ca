import { createMemo, Index, Show, type JSX } from 'solid-js';
import { ChartCanvas } from '../../../kit/charts/ChartCanvas';
import { createChartArea } from '../../../kit/charts/chartArea';
import { openRows } from '../../../kit/charts/rows';
import type { ChartInk } from '../../../../present/picture/ink';
import type { TakenParts } from '../../../../present/picture/takenPicture';
import { spiderCaption } from '../../../../present/whatMatters/spider/texts';
import type { RowsPicture } from '../../../../present/picture/rowsPicture';
import { localFormat } from '../../../app/preferences/localFormat';
import type { ShownBar } from '../../../../present/whatMatters/tornado/bars';
import { heights, layBars, type LaidBars } from '../../../../present/whatMatters/tornado/barTexts';
import type { TornadoSubject } from '../../../../present/whatMatters/tornado/sentences';
import { unchangedRows, tornadoUnit, rowsOf, type TornadoRow } from '../../../../present/whatMatters/tornado/rows';
import { tornadoPicture } from '../../../../present/whatMatters/tornado/picture';
import { tornadoTexts } from '../../../../present/whatMatters/tornado/texts';
import { commonTexts } from '../../../../present/text/commonTexts';

interface TornadoChartProps {
  readonly bars: readonly ShownBar[];
  readonly subject: TornadoSubject;
  /** Decimals of the results. */
  readonly decimals: number;
  readonly letter: 'A' | 'B' | undefined;
  readonly label: string;
  /** Whether its numbers are exact rather than float64. */
  readonly exact: boolean;
  readonly goTo: (cell: number) => void;
}

/** The bars, each below a line with the name of its entry, which links to the entry. */
export function TornadoChart(props: TornadoChartProps): JSX.Element {
  const chartArea = createChartArea();
  const today = (): number => props.subject.base.toNumber();
  const rows = createMemo<readonly TornadoRow[]>(
    (before) => unchangedRows(rowsOf(props.bars, props.subject, props.decimals, localFormat), before),
    [],
  );
  const laid = createMemo<LaidBars | undefined>((before) => {
    const ink = chartArea.ink();
    return ink && layBars(props.bars, rows(), today(), chartArea.width(), ink.measure, before?.layout);
  });
  const draw = (ink: ChartInk, width: number): RowsPicture => {
    const todayText = localFormat.fixed(props.subject.base, props.decimals);
    const tornado = { bars: props.bars, laid: laid()!, today: today(), todayText, letter: props.letter };
    return tornadoPicture(tornado, ink, width, localFormat);
  };
  const parts = async (): Promise<TakenParts> => {
    const { tornadoParts } = await import('../../../../present/whatMatters/tornado/takenTornado');
    return tornadoParts({ ...props, rows: rows() }, localFormat);
  };
  return (
    <figure class="tornado" data-letter={props.letter ?? ''}>
      <Key
        percentiles={rows().some(({ percentiles }) => percentiles)}
        flips={rows().some(({ flips }) => flips)}
        unit={tornadoUnit(props.subject)}
      />
      <ChartCanvas
        chartArea={chartArea}
        title={spiderCaption(props.subject)}
        label={props.label}
        open={openRows}
        draw={draw}
        parts={parts}
        waits={!props.exact}>
        <ol class="bars" style={{ '--bar-top': `${heights.top}px`, '--bar-row': `${laid()?.row ?? heights.row}px` }}>
          <Index each={rows()}>
            {(row) => (
              <li>
                <BarLine row={row()} goTo={props.goTo} />
              </li>
            )}
          </Index>
        </ol>
      </ChartCanvas>
    </figure>
  );
}

/** The key: what the two sides of a bar are, and the unit. */
function Key(props: { percentiles: boolean; flips: boolean; unit: string }): JSX.Element {
  return (
    <figcaption class="key">
      <span>
        <span class="swatch low" aria-hidden="true" /> {tornadoTexts.keyLow}
      </span>
      <span>
        <span class="swatch high" aria-hidden="true" /> {tornadoTexts.keyHigh}
      </span>
      <Show when={props.flips}>
        <span>
          <i class="flips">{tornadoTexts.flips}</i> {tornadoTexts.keyFlips}
        </span>
      </Show>
      <Show when={props.percentiles}>
        <span>{tornadoTexts.keyPercentiles}</span>
      </Show>
      <Show when={props.unit}>
        <span class="key-unit">{props.unit}</span>
      </Show>
    </figcaption>
  );
}

/**
 * The line of one bar. Marks that do not apply are blank and not left out, so that a keystroke changes texts only and
 * makes no elements.
 */
function BarLine(props: { row: TornadoRow; goTo: (cell: number) => void }): JSX.Element {
  return (
    <button type="button" class="bar" onClick={() => props.goTo(props.row.cell.id)}>
      <span class="bar-label">
        {props.row.name}
        <span aria-hidden="true">{props.row.percentiles ? '*' : ''}</span>
      </span>
      <span class="flips">{props.row.flips ? tornadoTexts.flips : ''}</span>
      <span class="leader" aria-hidden="true" />
      <span class="heard">{tornadoTexts.heardSwing}</span>
      <span class="bar-swing">{props.row.swing ?? commonTexts.unknown}</span>
      <span class="heard">{tornadoTexts.heardLink}</span>
    </button>
  );
}
