import { createMemo, For, Show, type JSX } from 'solid-js';
import { ChartCanvas } from '../chart/ChartCanvas';
import { createEasel } from '../chart/easel';
import { openLines, type LinesPicture } from '../chart/lines';
import { space } from '../format';
import { here } from '../here';
import { printedUnit } from '../printedUnit';
import { breakevenPicture } from './breakevenPicture';
import { drawnHeights } from './drawn';
import type { LineName } from './lines';
import { crossingMarks } from './marksOf';
import type { Looked, QuickStudy } from './quickStudy';
import type { Stretch } from './sample';
import type { Matter } from './told';

interface BreakevenChartProps {
  readonly matter: Matter;
  readonly quick: QuickStudy;
  readonly looked: Looked;
  readonly label: string;
}

function heightFor(width: number): number {
  return Math.round(Math.min(420, Math.max(260, width * 0.56)));
}

function withUnit(text: string, unit: string): string {
  return unit === '' ? text : `${text}, ${printedUnit(unit)}`;
}

/** Whether the target belongs in sight: where it is what the answer is about, or a line meets it there. */
function isMet({ found, targets }: Matter, { shown, leading }: Looked, { from, to }: Stretch): boolean {
  if (shown.includes(leading) || !targets.plan.isZero()) return true;
  const crossings = shown.flatMap((name) => found[name]?.crossings ?? []);
  return crossings.some(({ value }) => value.gte(from) && value.lte(to));
}

/** The lines, with the marks that the answer speaks of. */
export function BreakevenChart(props: BreakevenChartProps): JSX.Element {
  const easel = createEasel();
  const picture = createMemo((): LinesPicture | undefined => {
    const ink = easel.ink();
    if (ink === undefined) return undefined;
    const quick = props.quick;
    const looked = props.looked;
    const { moved, lines, targets, found } = props.matter;
    const inSight = looked.shown.map((name) =>
      (quick.points[name] ?? []).filter(({ x }) => x >= quick.drawn.from && x <= quick.drawn.to),
    );
    const target = targets[looked.shown[0] ?? 'plan'].toNumber();
    const always = looked.shown.map((name) => lines[name]?.base.toNumber() ?? target);
    if (isMet(props.matter, looked, quick.drawn)) always.push(target);
    const drawing = {
      points: quick.points,
      shown: looked.shown,
      drawn: quick.drawn,
      heights: drawnHeights(inSight, always),
      target,
      today: { x: moved.today.toNumber(), text: `today${space}${here.value(moved.today, moved.cell.unit)}` },
      range: moved.range && { from: moved.range.low.toNumber(), to: moved.range.high.toNumber() },
      crossings: crossingMarks(found, lines, targets, moved, looked, here),
      breaks: looked.shown.flatMap((name) => (found[name]?.breaks ?? []).map((value) => value.toNumber())),
      xTitle: withUnit(moved.cell.label, moved.cell.unitText),
    };
    return breakevenPicture(drawing, ink, { width: easel.width(), height: heightFor(easel.width()) }, here);
  });
  return (
    <figure class="curve">
      <Key matter={props.matter} shown={props.looked.shown} />
      <ChartCanvas easel={easel} label={props.label} open={openLines} picture={picture()} />
    </figure>
  );
}

function Key(props: { matter: Matter; shown: readonly LineName[] }): JSX.Element {
  const names = (): Record<LineName, string> => {
    const { asked } = props.matter;
    return { against: asked.against ?? '', plan: asked.plan, difference: `${asked.plan} less ${asked.against ?? ''}` };
  };
  const isBoth = (): boolean => props.shown.length > 1;
  return (
    <figcaption class="key">
      <span class="key-what">{withUnit(props.matter.asked.result.label, props.matter.asked.result.unitText)}</span>
      <Show when={isBoth()}>
        <For each={props.shown}>
          {(name) => (
            <span class="key-line" data-line={name}>
              <span class="line-swatch" aria-hidden="true" /> {name === 'against' ? 'A' : 'B'} {names()[name]}
            </span>
          )}
        </For>
      </Show>
      <Show when={props.matter.moved.range}>
        <span>
          <span class="range-swatch" aria-hidden="true" /> its range
        </span>
      </Show>
    </figcaption>
  );
}
