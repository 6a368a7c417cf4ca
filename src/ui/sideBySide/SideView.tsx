import { createMemo, type JSX } from 'solid-js';
import { decimal, type Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import { lowestOf } from '../../study/lowest';
import { drawnHeights } from '../breakeven/drawn';
import type { LinesDrawing } from '../chart/labelledLines';
import { LineKey } from '../finding/LineKey';
import { LinesChart } from '../finding/LinesChart';
import { textOf } from '../finding/phrase';
import { Said } from '../finding/Said';
import { Sentence } from '../finding/Sentence';
import { space } from '../format';
import { here } from '../here';
import { printedUnit } from '../printedUnit';
import type { SideAsk, SideLines } from './lines';
import { SideTables } from './SideTables';
import { withUnit } from './table';
import { sideTold } from './told';

interface SideViewProps {
  readonly ask: SideAsk;
  readonly found: SideLines;
  /** Name of the plan; blank where there is only one. */
  readonly plan: string;
  readonly goTo: (cell: number) => void;
}

function finite(value: Decimal): Decimal {
  return value.isFinite() ? value : decimal(NaN);
}

/** Results side by side: what they say, their lines, and the same numbers as tables. */
export function SideView(props: SideViewProps): JSX.Element {
  const cells = createMemo((): Cell[] => props.ask.results.map(({ cell }) => cell));
  const today = createMemo(() => props.ask.results.map(({ response }) => finite(response.base)));
  const moves = (): boolean => props.ask.results.some(({ response }) => response.depends);
  const told = createMemo(() =>
    sideTold(
      {
        lever: props.ask.lever,
        cells: cells(),
        today: today(),
        stretches: moves() ? props.found.stretches : undefined,
      },
      here,
    ),
  );
  const unit = (): string => printedUnit(cells()[0]?.unitText ?? '');
  return (
    <>
      <Said>
        <p class="finding">
          <Sentence phrase={told()} />
        </p>
      </Said>
      <LinesChart
        drawing={drawingOf(props, today())}
        label={textOf(told())}
        caption={[unit(), props.plan].filter(Boolean).join(', in ')}>
        <LineKey
          figures={['today', unit()].filter(Boolean).join(', ')}
          lines={cells().map((cell, place) => ({
            label: cell.label,
            leading: place === lowestOf(today()),
            figure: today()[place]!.isNaN() ? 'unknown' : here.value(today()[place]!, cell.unit),
            goTo: () => props.goTo(cell.id),
          }))}
        />
      </LinesChart>
      <SideTables found={props.found} cells={cells()} input={props.ask.lever.cell} />
    </>
  );
}

/** Where another one becomes the lowest, with how low it is there. */
function ringsOf({ found }: SideViewProps): { x: number; y: number }[] {
  return found.stretches.slice(1).flatMap(({ from, curve }) => {
    const x = from.toNumber();
    const near = found.points[curve ?? -1]?.find((point) => point.x >= x);
    return near === undefined || Number.isNaN(near.y) ? [] : [{ x, y: near.y }];
  });
}

function drawingOf(props: SideViewProps, today: readonly Decimal[]): LinesDrawing {
  const {
    found: { drawn, points },
    ask: { lever, results },
  } = props;
  const leading = lowestOf(today);
  const inside = points.map((line) => line.filter(({ x }) => x >= drawn.from && x <= drawn.to));
  return {
    lines: results.map(({ cell }, place) => ({
      label: cell.label,
      leading: place === leading,
      points: inside[place] ?? [],
    })),
    across: { min: drawn.from, max: drawn.to, title: withUnit(lever.cell), tickAfter: '' },
    heights: drawnHeights(
      inside,
      today.map((value) => value.toNumber()).filter((y) => !Number.isNaN(y)),
    ),
    today: { x: lever.base.toNumber(), text: `today${space}${here.value(lever.base, lever.cell.unit)}` },
    levels: [],
    rings: ringsOf(props),
  };
}
