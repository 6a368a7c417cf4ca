import { apart } from '../picture/apart';
import { cut } from '../picture/labelledLines';
import { fontOf, type ChartInk } from '../picture/ink';
import { bar, upright, type BarStyle } from '../picture/marks';
import type { Plot } from '../picture/plot';
import type { RowsPicture } from '../picture/rowsPicture';
import type { Format } from '../text/numberFormat';

/** One result over the plans, as bars from 0. */
export interface PlanBars {
  readonly names: readonly string[];
  /** `A` and `B` for the plans that are compared; C, D and so on for the others. */
  readonly letters: readonly string[];
  /** NaN where a plan has none. */
  readonly values: readonly number[];
  readonly texts: readonly string[];
  /** How the bars are drawn where they stand for no plans, and no letter tells. */
  readonly looks?: readonly ('filled' | 'hatched')[];
}

const row = 24;
const thickness = 13;
const top = 2;
const foot = 24;
/** From names to bars and from bars to numbers, in pixels. */
const gap = 8;
/** Share of the width that names may take. */
const mostNames = 0.38;

/** Filled for A, hatched for B, outlined for any other: what tells them apart is never colour alone. */
function styleOf({ letters, looks }: PlanBars, place: number, ink: ChartInk): BarStyle {
  const [letter, look] = [letters[place], looks?.[place]];
  if (look === 'filled') return { fill: ink.quiet, edge: ink.quiet, thickness };
  if (look === 'hatched') return { fill: ink.hatched(ink.quiet), edge: ink.quiet, thickness };
  if (letter === 'A') return { fill: ink.planA, edge: ink.planA, thickness };
  if (letter === 'B') return { fill: ink.hatched(ink.planB), edge: ink.planB, thickness };
  return { fill: ink.paper, edge: ink.quiet, thickness };
}

/** Least and largest number of the axis: 0 is always on it. */
function endsOf(values: readonly number[]): { min: number; max: number } {
  const finite = values.filter((value) => Number.isFinite(value));
  const [min, max] = [Math.min(0, ...finite), Math.max(0, ...finite)];
  return min === max ? { min, max: 1 } : { min, max };
}

function labelOf(bars: PlanBars, plan: number): string {
  return [bars.letters[plan], bars.names[plan]].filter(Boolean).join(' ');
}

/** The drawing of one result's bars. */
export function barsPicture(bars: PlanBars, ink: ChartInk, width: number, format: Format): RowsPicture {
  const names = bars.names.map((_name, plan) => cut(labelOf(bars, plan), width * mostNames, ink.measure));
  const left = Math.max(0, ...names.map((name) => ink.measure(name))) + gap;
  const right = Math.max(0, ...bars.texts.map((text) => ink.measure(text))) + gap;
  const ends = endsOf(bars.values);
  const { planA, planB, text: plain } = ink;
  const nameColour = (letter: string): string => (letter === 'A' ? planA : letter === 'B' ? planB : plain);
  const write = ({ pen, width: edge, y }: Plot): void => {
    pen.font = fontOf(ink);
    pen.textBaseline = 'middle';
    names.forEach((name, plan) => {
      pen.textAlign = 'left';
      pen.fillStyle = nameColour(bars.letters[plan] ?? '');
      pen.fillText(apart(name), 0, y(plan));
      pen.textAlign = 'right';
      pen.fillStyle = plain;
      pen.fillText(bars.texts[plan] ?? '', edge, y(plan));
    });
  };
  return {
    width,
    height: top + bars.names.length * row + foot,
    ink,
    padding: { left, right, top, bottom: 0 },
    x: { ...ends, title: '', tick: format.tick },
    rows: bars.names.length,
    foot,
    under: (plot) => {
      upright(plot, 0, { colour: ink.quiet, width: 1, dash: [] });
      bars.values.forEach((value, plan) => {
        bar(plot, 0, value, plot.y(plan), styleOf(bars, plan, ink));
      });
    },
    over: write,
  };
}
