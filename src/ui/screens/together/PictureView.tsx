import { createEffect, createMemo, createSignal, on, onMount, Show, type Accessor, type JSX } from 'solid-js';
import { boxName, valueOfEntry } from '../../../present/together/boxText';
import { togetherTexts } from '../../../present/together/texts';
import { commonTexts } from '../../../present/text/commonTexts';
import { watchSize } from '../../app/layout/watchSize';
import { usePage } from '../../app/pageContext';
import { localFormat } from '../../app/preferences/localFormat';
import { Waiting } from '../../kit/sections/Waiting';
import { Link } from '../../kit/Link';
import { Drawing } from './Drawing';
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

/** Room on paper, A4 less its margins, upright or lying, in CSS pixels. */
const upright = { width: 680, height: 850 };
const lying = { width: 1000, height: 560 };

/** The room for a picture: on the screen that of its box, on paper that of a page. */
function createRoom(
  scene: Accessor<Scene | undefined>,
  box: Accessor<HTMLElement>,
): {
  readonly room: Accessor<{ readonly width: number; readonly height: number }>;
  readonly isLying: Accessor<boolean>;
} {
  const { printing } = usePage();
  const [screen, setScreen] = createSignal({ width: 600, height: 500 });
  onMount(() =>
    watchSize(box(), () => {
      if (!printing()) setScreen({ width: box().clientWidth, height: innerHeight * highest });
    }),
  );
  const isLying = createMemo(() => {
    const { width, height } = scene()?.layout ?? { width: 1, height: 1 };
    return width > upright.width && width > 1.2 * height;
  });
  const room = createMemo(() => (printing() ? (isLying() ? lying : upright) : screen()));
  return { isLying, room };
}

/** The picture in a box that scrolls, with its size to choose. */
export function PictureView(props: PictureViewProps): JSX.Element {
  const { choice, store, printing } = usePage();
  let box!: HTMLDivElement;
  const [touched, setTouched] = createSignal<number>();
  const scene = (): Scene | undefined => props.picture.scene();
  const { room, isLying } = createRoom(scene, () => box);
  const isWhole = (): boolean => scene()?.drawn.middle === undefined;
  const zoom = createZoom({ layout: () => scene()?.layout, room, isWhole, printing });
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
    <div class="together-sheet" classList={{ lying: isLying() }}>
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
            <Drawing
              scene={now()}
              picture={props.picture}
              zoom={zoom}
              first={looked()}
              touched={touched()}
              put={props.put}
              onTouched={setTouched}
            />
          )}
        </Show>
      </div>
      <Caption scene={scene()} picture={props.picture} touched={touched()} />
    </div>
  );
}

/** What the box that is pointed at or in hand says, which may be too small to read; else what can be done. */
function Caption(props: { scene: Scene | undefined; picture: Picture; touched: number | undefined }): JSX.Element {
  const { store } = usePage();
  const text = createMemo(() => {
    const box = props.touched === undefined ? undefined : props.scene?.boxes.get(props.touched);
    if (box === undefined) return togetherTexts.howToWalk;
    const values = box.columns.map((plan) => valueOfEntry(store.shown(plan, box.id), box.cell, localFormat));
    const group = props.picture.marks().get(box.id)?.group ?? '';
    return boxName(box.cell.label, values, group, props.scene?.drawn.middle === box.id);
  });
  return (
    <p class="quiet together-caption" aria-hidden={props.touched === undefined ? undefined : 'true'}>
      {text()}
    </p>
  );
}

function PictureTools(props: { zoom: Zoom; isWide: boolean; onWide: (wide: boolean) => void }): JSX.Element {
  return (
    <div class="together-tools" role="group" aria-label={togetherTexts.size}>
      <button type="button" class="word" aria-pressed={props.zoom.isFit()} onClick={() => props.zoom.fit()}>
        {togetherTexts.fit}
      </button>
      <button
        type="button"
        class="word"
        aria-pressed={!props.zoom.isFit() && props.zoom.scale() === 1}
        onClick={() => props.zoom.actual()}>
        {togetherTexts.actual}
      </button>
      <button type="button" class="word" onClick={() => props.zoom.step(-1)}>
        {togetherTexts.smaller}
      </button>
      <button type="button" class="word" onClick={() => props.zoom.step(1)}>
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
        <Waiting>{togetherTexts.layingOut}</Waiting>
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
