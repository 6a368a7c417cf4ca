import { createMemo, For, Show, type JSX } from 'solid-js';
import { arrowLines, type ArrowLine } from '../../../present/together/arrowLines';
import { letterOf } from '../../../present/text/planLetter';
import type { Picture, Scene } from './scene';

/** The arrows, those of the middle and of a box that is pointed at stronger than the others. */
export function Arrows(props: { scene: Scene; picture: Picture; touched: number | undefined }): JSX.Element {
  const lines = createMemo(() => arrowLines(props.scene.layout));
  const letters = createMemo(() => {
    const plans = props.picture.plans().length;
    const found = props.scene.drawn.arrows.map((arrow) => [
      `${arrow.from} ${arrow.to}`,
      arrow.plans.length < plans ? letterOf(arrow.plans[0] ?? 0, plans) : '',
    ]);
    return new Map(found as [string, string][]);
  });
  const joins = ({ from, to }: ArrowLine, id: number | undefined): boolean => from === id || to === id;
  return (
    <g class="together-arrows" aria-hidden="true">
      <For each={lines()}>
        {(arrow) => {
          const letter = (): string => letters().get(`${arrow.from} ${arrow.to}`) ?? '';
          return (
            <g
              class="together-arrow"
              classList={{ near: joins(arrow, props.scene.drawn.middle), lit: joins(arrow, props.touched) }}
              data-letter={letter() || undefined}>
              <path class="line" d={arrow.line} />
              <path class="head" d={arrow.head} />
              <Show when={letter()}>
                <circle class="spot" cx={arrow.letterAt.x} cy={arrow.letterAt.y} r="7" />
                <text x={arrow.letterAt.x} y={arrow.letterAt.y + 4} text-anchor="middle">
                  {letter()}
                </text>
              </Show>
            </g>
          );
        }}
      </For>
    </g>
  );
}
