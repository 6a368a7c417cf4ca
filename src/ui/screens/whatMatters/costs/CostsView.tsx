import { createMemo, type JSX } from 'solid-js';
import { decimal, type Decimal } from '../../../../core/number';
import type { Cell } from '../../../../model/cell';
import { lowestOf } from '../../../../study/lowest';
import { visibleHeights } from '../../../../present/breakeven/curve/visibleRange';
import type { LinesDrawing } from '../../../../present/picture/labelledLines';
import { LineKey } from '../../../kit/charts/LineKey';
import { LinesChart } from '../../../kit/charts/LinesChart';
import { textOf } from '../../../../present/text/phrase';
import { LiveText } from '../../../kit/sections/LiveText';
import { Sentence } from '../../../kit/sections/Sentence';
import { localFormat } from '../../../app/preferences/localFormat';
import { printedUnit } from '../../../../present/text/printedUnit';
import type { CostsRequest, CostsLines } from '../../../../present/whatMatters/costs/lines';
import { CostsTables } from './CostsTables';
import { withUnit } from '../../../../present/text/withUnit';
import { costsSentence } from '../../../../present/whatMatters/costs/sentences';
import { costsCaption, costsFigures } from '../../../../present/whatMatters/costs/texts';
import { commonTexts } from '../../../../present/text/commonTexts';

interface SideViewProps {
  readonly ask: CostsRequest;
  readonly found: CostsLines;
  /** Name of the plan; blank where there is only one. */
  readonly plan: string;
  readonly goTo: (cell: number) => void;
}

function finite(value: Decimal): Decimal {
  return value.isFinite() ? value : decimal(NaN);
}

/** Results side by side: sentences, lines and tables. */
export function CostsView(props: SideViewProps): JSX.Element {
  const cells = createMemo((): Cell[] => props.ask.results.map(({ cell }) => cell));
  const today = createMemo(() => props.ask.results.map(({ response }) => finite(response.base)));
  const moves = (): boolean => props.ask.results.some(({ response }) => response.depends);
  const sentence = createMemo(() =>
    costsSentence(
      {
        lever: props.ask.lever,
        cells: cells(),
        today: today(),
        stretches: moves() ? props.found.stretches : undefined,
      },
      localFormat,
    ),
  );
  const unit = (): string => printedUnit(cells()[0]?.unitText ?? '');
  return (
    <>
      <LiveText>
        <p class="finding">
          <Sentence phrase={sentence()} />
        </p>
      </LiveText>
      <LinesChart
        drawing={drawingOf(props, today())}
        label={textOf(sentence())}
        caption={costsCaption(unit(), props.plan)}>
        <LineKey
          figures={costsFigures(unit())}
          lines={cells().map((cell, place) => ({
            label: cell.label,
            leading: place === lowestOf(today()),
            figure: today()[place]!.isNaN() ? commonTexts.unknown : localFormat.value(today()[place]!, cell.unit),
            goTo: () => props.goTo(cell.id),
          }))}
        />
      </LinesChart>
      <CostsTables found={props.found} cells={cells()} input={props.ask.lever.cell} />
    </>
  );
}

/** Marks where another result becomes the lowest, at its height there. */
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
    heights: visibleHeights(
      inside,
      today.map((value) => value.toNumber()).filter((y) => !Number.isNaN(y)),
    ),
    today: { x: lever.base.toNumber(), text: commonTexts.todayAt(localFormat.value(lever.base, lever.cell.unit)) },
    levels: [],
    rings: ringsOf(props),
  };
}
