import { createEffect, createMemo, createSelector, createSignal, For, on, onMount, Show, type JSX } from 'solid-js';
import { arrowLines, type ArrowLine } from '../../../present/together/arrowLines';
import { togetherTexts } from '../../../present/together/texts';
import { boxTowards } from '../../../present/together/walk';
import { letterOf } from '../../../present/text/planLetter';
import { watchSize } from '../../app/layout/watchSize';
import { usePage } from '../../app/pageContext';
import { commonTexts } from '../../../present/text/commonTexts';
import { Link } from '../../kit/Link';
import { EntryBoxView } from './EntryBoxView';
import { GroupPatterns } from './GroupPatterns';
import type { Picture, Scene } from './scene';
import { createZoom, type Zoom } from './zoom';

interface PictureViewProps {
  readonly picture: Picture;
  /** Puts an entry in the middle. */
  readonly put: (id: number) => void;
  readonly isWide: boolean;
  readonly onWide: (wide: boolean) => void;
}

/** Share of the window that the picture may be high. */
const highest = 0.62;

/** The picture in a box that scrolls, with its size to choose. */
export function PictureView(props: PictureViewProps): JSX.Element {
  const { choice, store } = usePage();
  let box!: HTMLDivElement;
  const [room, setRoom] = createSignal({ width: 600, height: 500 });
  const scene = (): Scene | undefined => props.picture.scene();
  const zoom = createZoom(() => scene()?.layout, room);
  onMount(() => watchSize(box, () => setRoom({ width: box.clientWidth, height: innerHeight * highest })));
  /** The box that is looked at first: the middle, else the result that is asked about. */
  const looked = createMemo(() => {
    const now = scene();
    return now?.drawn.middle ?? store.shape().ids.get(choice.result()) ?? now?.drawn.ids[0];
  });
  const centre = (): void => {
    const place = scene()?.layout.boxes.find(({ id }) => id === looked());
    if (place === undefined) return;
    box.scrollLeft = place.x * zoom.scale() - box.clientWidth / 2;
    box.scrollTop = place.y * zoom.scale() - box.clientHeight / 2;
  };
  createEffect(on([() => scene()?.layout, zoom.scale], () => requestAnimationFrame(centre)));
  return (
    <>
      <PictureTools zoom={zoom} isWide={props.isWide} onWide={props.onWide} />
      <State picture={props.picture} />
      <div
        class="together-room"
        role="region"
        aria-label={togetherTexts.region}
        tabindex="0"
        ref={box}
        style={{ '--high': `${Math.ceil((scene()?.layout.height ?? 200) * zoom.scale()) + 2}px` }}>
        <Show when={scene()}>
          {(now) => (
            <Drawing scene={now()} picture={props.picture} scale={zoom.scale()} first={looked()} put={props.put} />
          )}
        </Show>
      </div>
      <p class="quiet together-walk">{togetherTexts.howToWalk}</p>
    </>
  );
}

function PictureTools(props: { zoom: Zoom; isWide: boolean; onWide: (wide: boolean) => void }): JSX.Element {
  const { zoom } = props;
  return (
    <div class="together-tools" role="group" aria-label={togetherTexts.size}>
      <button type="button" class="word" aria-pressed={zoom.isFit()} onClick={() => zoom.fit()}>
        {togetherTexts.fit}
      </button>
      <button
        type="button"
        class="word"
        aria-pressed={!zoom.isFit() && zoom.scale() === 1}
        onClick={() => zoom.actual()}>
        {togetherTexts.actual}
      </button>
      <button type="button" class="word" onClick={() => zoom.step(-1)}>
        {togetherTexts.smaller}
      </button>
      <button type="button" class="word" onClick={() => zoom.step(1)}>
        {togetherTexts.larger}
      </button>
      <button type="button" class="word together-wide" onClick={() => props.onWide(!props.isWide)}>
        {props.isWide ? togetherTexts.narrow : togetherTexts.wide}
      </button>
    </div>
  );
}

/** Says while nothing can be shown yet, or why it cannot. */
function State(props: { picture: Picture }): JSX.Element {
  const state = (): ReturnType<Picture['job']['state']> => props.picture.job.state();
  return (
    <>
      <Show when={state().state === 'busy' && props.picture.scene() === undefined}>
        <p class="quiet" role="status">
          {togetherTexts.layingOut}
        </p>
      </Show>
      <Show when={state().state === 'failed'}>
        <p role="alert">
          {togetherTexts.notLaidOut(state().reason)}{' '}
          <Link onPress={() => props.picture.job.again()}>{commonTexts.tryAgain}</Link>
        </p>
      </Show>
    </>
  );
}

interface DrawingProps {
  readonly scene: Scene;
  readonly picture: Picture;
  readonly scale: number;
  /** The entry on which the Tab key lands before any other was in hand. */
  readonly first: number | undefined;
  readonly put: (id: number) => void;
}

function Drawing(props: DrawingProps): JSX.Element {
  let drawing!: SVGSVGElement;
  const [held, setHeld] = createSignal<number>();
  const [pointed, setPointed] = createSignal<number>();
  const places = createMemo(() => new Map(props.scene.layout.boxes.map((one) => [one.id, one])));
  const stop = createMemo(() => {
    const one = held();
    return one !== undefined && places().has(one) ? one : props.first;
  });
  const isStop = createSelector(stop);
  const isTouched = createMemo(() => pointed() ?? held());
  const focus = (id: number): void => drawing.querySelector<SVGGElement>(`[data-entry="${id}"]`)?.focus();
  const onKeyDown = (event: KeyboardEvent): void => {
    const id = held();
    if (id === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    const next = boxTowards(props.scene.layout, id, event.key);
    const isPress = event.key === 'Enter' || event.key === ' ';
    if (isPress) props.put(id);
    else if (next !== undefined) focus(next);
    else if (!event.key.startsWith('Arrow')) return;
    event.preventDefault();
  };
  // Boxes that change places among one another lose the focus.
  createEffect(
    on(
      () => props.scene.layout,
      () => {
        const id = held();
        if (id !== undefined) requestAnimationFrame(() => focus(id));
      },
      { defer: true },
    ),
  );
  return (
    <svg
      ref={drawing}
      class="together-picture"
      classList={{ touched: isTouched() !== undefined }}
      role="group"
      aria-label={togetherTexts.picture}
      viewBox={`0 0 ${props.scene.layout.width} ${props.scene.layout.height}`}
      width={props.scene.layout.width * props.scale}
      height={props.scene.layout.height * props.scale}
      onKeyDown={onKeyDown}
      onFocusOut={() => setHeld(undefined)}>
      <GroupPatterns />
      <Arrows scene={props.scene} picture={props.picture} touched={isTouched()} />
      <For each={props.scene.layout.boxes.map(({ id }) => id)}>
        {(id) => (
          <EntryBoxView
            box={props.scene.boxes.get(id)}
            place={places().get(id)}
            mark={props.picture.marks().get(id)}
            measure={props.picture.measure()}
            isMiddle={props.scene.drawn.middle === id}
            isStop={isStop(id)}
            isInput={props.picture.links().isInput[id] === true}
            onPress={() => props.put(id)}
            onHeld={() => setHeld(id)}
            onPointed={(isOver) => setPointed(isOver ? id : undefined)}
          />
        )}
      </For>
    </svg>
  );
}

/** The arrows, those of the middle and of a box that is pointed at stronger than the others. */
function Arrows(props: { scene: Scene; picture: Picture; touched: number | undefined }): JSX.Element {
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
