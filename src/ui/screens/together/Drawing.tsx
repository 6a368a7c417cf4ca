import { createEffect, createMemo, createSelector, createSignal, For, on, type Accessor, type JSX } from 'solid-js';
import { togetherTexts } from '../../../present/together/texts';
import { boxTowards } from '../../../present/together/walk';
import { Arrows } from './Arrows';
import { EntryBoxView } from './EntryBoxView';
import { GroupPatterns } from './GroupPatterns';
import { saidId } from './saidId';
import type { Picture, Scene } from './scene';
import type { Zoom } from './zoom';

interface DrawingProps {
  readonly scene: Scene;
  readonly picture: Picture;
  readonly zoom: Zoom;
  /** The entry on which the Tab key lands before any other was in hand. */
  readonly first: number | undefined;
  /** The entry that is pointed at or in hand. */
  readonly touched: number | undefined;
  readonly put: (id: number) => void;
  readonly onTouched: (id: number | undefined) => void;
}

interface Walk {
  /** The entry that has the focus. */
  readonly held: Accessor<number | undefined>;
  readonly hold: (id: number | undefined) => void;
  readonly put: (id: number) => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}

/** Goes from box to box by arrow keys, and keeps the focus on a box that is pressed. */
function createWalk(props: DrawingProps, drawing: Accessor<SVGSVGElement>): Walk {
  let pressed: number | undefined;
  const [held, setHeld] = createSignal<number>();
  const focus = (id: number): void => drawing().querySelector<SVGGElement>(`[data-entry="${id}"]`)?.focus();
  const put = (id: number): void => {
    pressed = id;
    props.put(id);
  };
  // Boxes that change places among one another lose the focus.
  const keepFocus = (): void => {
    const id = pressed;
    pressed = undefined;
    if (id !== undefined) requestAnimationFrame(() => focus(id));
  };
  createEffect(on(() => props.scene.layout, keepFocus, { defer: true }));
  return {
    held,
    put,
    hold: (id) => {
      setHeld(id);
      props.onTouched(id);
    },
    onKeyDown: (event) => {
      const id = held();
      if (id === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
      const next = boxTowards(props.scene.layout, id, event.key);
      if (event.key === 'Enter' || event.key === ' ') put(id);
      else if (next !== undefined) focus(next);
      else if (!event.key.startsWith('Arrow')) return;
      event.preventDefault();
    },
  };
}

/** Boxes and arrows. One box takes the Tab key; arrow keys lead from it to others. */
export function Drawing(props: DrawingProps): JSX.Element {
  let drawing!: SVGSVGElement;
  const places = createMemo(() => new Map(props.scene.layout.boxes.map((one) => [one.id, one])));
  const { held, hold, put, onKeyDown } = createWalk(props, () => drawing);
  const isStop = createSelector(() => {
    const one = held();
    return one !== undefined && places().has(one) ? one : props.first;
  });
  return (
    <svg
      ref={drawing}
      class="together-picture"
      classList={{ touched: props.touched !== undefined, tiny: props.zoom.detail() === 'none' }}
      style={{ '--thin': `${Math.max(1, 0.55 / props.zoom.scale())}` }}
      role="group"
      aria-label={togetherTexts.picture}
      aria-describedby={saidId}
      viewBox={`0 0 ${props.scene.layout.width} ${props.scene.layout.height}`}
      width={props.scene.layout.width * props.zoom.scale()}
      height={props.scene.layout.height * props.zoom.scale()}
      onKeyDown={onKeyDown}
      onFocusOut={() => hold(undefined)}>
      <GroupPatterns marks={[...new Set(props.picture.marks().values())]} />
      <Arrows scene={props.scene} picture={props.picture} touched={props.touched} />
      <For each={props.scene.layout.boxes.map(({ id }) => id)}>
        {(id) => (
          <EntryBoxView
            box={props.scene.boxes.get(id)}
            place={places().get(id)}
            mark={props.picture.marks().get(id)}
            measure={props.picture.measure()}
            detail={props.zoom.detail()}
            isMiddle={props.scene.drawn.middle === id}
            isStop={isStop(id)}
            isInput={props.picture.links().isInput[id] === true}
            onPress={() => put(id)}
            onHeld={() => hold(id)}
            onPointed={(isOver) => props.onTouched(isOver ? id : held())}
          />
        )}
      </For>
    </svg>
  );
}
