import { For, Show, type JSX } from 'solid-js';
import { ChartCanvas } from '../../kit/charts/ChartCanvas';
import { openLines } from '../../kit/charts/lines';
import type { LinesPicture } from '../../../present/picture/linesPicture';
import { localFormat } from '../../app/preferences/localFormat';
import { withUnit } from '../../../present/text/withUnit';
import type { ChartInk } from '../../../present/picture/ink';
import { breakevenKey } from '../../../present/breakeven/breakevenKey';
import { breakevenPicture } from '../../../present/breakeven/picture';
import { visibleHeights } from '../../../present/breakeven/curve/visibleRange';
import type { LineName } from '../../../present/results/resultLines';
import { crossingMarks } from '../../../present/breakeven/crossingMarks';
import type { LineSelection, QuickStudy } from '../../../present/breakeven/curve/quickStudy';
import type { InputInterval } from '../../../present/breakeven/curve/sample';
import type { BreakevenContext } from '../../../present/breakeven/sentences';
import { lineInKey } from '../../../present/breakeven/lineTexts';
import { commonTexts } from '../../../present/text/commonTexts';

interface BreakevenChartProps {
  readonly matter: BreakevenContext;
  readonly quick: QuickStudy;
  readonly selection: LineSelection;
  readonly label: string;
}

function heightFor(width: number): number {
  return Math.round(Math.min(420, Math.max(260, width * 0.56)));
}

/** Whether the target line should be in sight: where the answer is about it, or where a line meets it. */
function isMet(
  { found, targets }: BreakevenContext,
  { shown, leading }: LineSelection,
  { from, to }: InputInterval,
): boolean {
  if (shown.includes(leading) || !targets.plan.isZero()) return true;
  const crossings = shown.flatMap((name) => found[name]?.crossings ?? []);
  return crossings.some(({ value }) => value.gte(from) && value.lte(to));
}

/** The chart: lines, with marks at the crossings. */
export function BreakevenChart(props: BreakevenChartProps): JSX.Element {
  const draw = (ink: ChartInk, width: number): LinesPicture => {
    const quick = props.quick;
    const selection = props.selection;
    const { moved, lines, targets, found } = props.matter;
    const inSight = selection.shown.map((name) =>
      (quick.points[name] ?? []).filter(({ x }) => x >= quick.visible.from && x <= quick.visible.to),
    );
    const target = targets[selection.shown[0] ?? 'plan'].toNumber();
    const always = selection.shown.map((name) => lines[name]?.base.toNumber() ?? target);
    if (isMet(props.matter, selection, quick.visible)) always.push(target);
    const drawing = {
      points: quick.points,
      shown: selection.shown,
      visible: quick.visible,
      heights: visibleHeights(inSight, always),
      target,
      today: {
        x: moved.today.toNumber(),
        text: commonTexts.todayAt(localFormat.value(moved.today, moved.cell.unit)),
      },
      range: moved.range && { from: moved.range.low.toNumber(), to: moved.range.high.toNumber() },
      crossings: crossingMarks(found, lines, targets, moved, selection, localFormat),
      breaks: selection.shown.flatMap((name) => (found[name]?.breaks ?? []).map((value) => value.toNumber())),
      xTitle: withUnit(moved.cell),
    };
    return breakevenPicture(drawing, ink, { width, height: heightFor(width) }, localFormat);
  };
  return (
    <figure class="curve">
      <Key matter={props.matter} shown={props.selection.shown} />
      <ChartCanvas
        title={withUnit(props.matter.subject.result)}
        label={props.label}
        open={openLines}
        draw={draw}
        parts={() => ({ key: (ink) => breakevenKey(props.matter, props.selection.shown, ink) })}
      />
    </figure>
  );
}

function Key(props: { matter: BreakevenContext; shown: readonly LineName[] }): JSX.Element {
  const isBoth = (): boolean => props.shown.length > 1;
  return (
    <figcaption class="key">
      <span class="key-what">{withUnit(props.matter.subject.result)}</span>
      <Show when={isBoth()}>
        <For each={props.shown}>
          {(name) => (
            <span class="key-line" data-line={name}>
              <span class="line-swatch" aria-hidden="true" /> {lineInKey(props.matter, name)}
            </span>
          )}
        </For>
      </Show>
      <Show when={props.matter.moved.range}>
        <span>
          <span class="range-swatch" aria-hidden="true" /> {commonTexts.itsRange}
        </span>
      </Show>
    </figcaption>
  );
}
