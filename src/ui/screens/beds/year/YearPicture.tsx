import { createMemo, createUniqueId, For, Show, type JSX } from 'solid-js';
import type { Calendar } from '../../../../trade/calendar';
import type { CropNames } from '../../../../present/beds/stageNames';
import { createChartArea } from '../../../kit/charts/chartArea';
import type { TakenPicture } from '../../../../present/picture/takenPicture';
import { onLightGround } from '../../../kit/charts/lightGround';
import { TakeOut } from '../../../kit/takeOut/TakeOut';
import { localFormat } from '../../../app/preferences/localFormat';
import {
  bandPath,
  namedMonths,
  yearBands,
  yearRoom,
  type YearBands,
  type Room,
} from '../../../../present/beds/year/bands';
import { whole } from '../../../../present/text/quantities';
import { createDates } from '../../../../present/text/dates';
import { yearTexts } from '../../../../present/beds/year/texts';

/** Hatches that tell the bands apart besides their tint, used in turn. */
const marks = ['', 'M-1,7 L7,-1', 'M0,3 L6,3', 'M-1,7 L7,-1 M-1,-1 L7,7'];

const dates = createDates(localFormat.locale);

interface YearPictureProps {
  readonly year: Calendar;
  readonly boards: number;
  readonly names: CropNames;
  /** The picture's finding, for screen readers. */
  readonly label: string;
}

/** A year from an empty bed as stacked bands, against the boards owned. */
export function YearPicture(props: YearPictureProps): JSX.Element {
  const chartArea = createChartArea();
  const id = createUniqueId();
  const room = (): Room => yearRoom(chartArea.width());
  const drawn = createMemo(() => yearBands(props.year, props.boards, room()));
  const taken = async (): Promise<TakenPicture> => {
    // Asked for when a button is pressed, with what is shown then.
    // eslint-disable-next-line solid/reactivity
    const { year, boards, names, label } = props;
    const { takenYear } = await import('../../../../present/beds/year/takenYear');
    return takenYear({ year, boards, names, label, leaf: lightLeaf() }, localFormat, dates);
  };
  return (
    <figure class="year">
      <figcaption class="key">
        <For each={drawn().bands}>
          {({ stage }) => (
            <span>
              <svg class="band-swatch" width="24" height="12" aria-hidden="true">
                <rect width="24" height="12" fill={`url(#${id}-${stage})`} />
              </svg>{' '}
              {yearTexts.band(props.names, stage)}
            </span>
          )}
        </For>
        <span>
          <i class="limit-swatch" aria-hidden="true" /> {yearTexts.limit(props.names)}
        </span>
        <Show when={drawn().over.length > 0}>
          <span>
            <b class="over-mark">!</b> {yearTexts.overFull}
          </span>
        </Show>
      </figcaption>
      <div class="year-room" ref={(box) => chartArea.hold(box)}>
        <svg
          class="year-drawing"
          role="img"
          aria-label={props.label}
          width="100%"
          height={room().height}
          viewBox={chartArea.width() > 0 ? `0 0 ${chartArea.width()} ${room().height}` : undefined}>
          <Patterns id={id} count={drawn().bands.length} />
          <Show when={chartArea.width() > 0}>
            <Drawn bands={drawn()} room={room()} id={id} boards={props.boards} />
          </Show>
        </svg>
      </div>
      <TakeOut caption={yearTexts.picture} picture={taken} />
    </figure>
  );
}

function Patterns(props: { id: string; count: number }): JSX.Element {
  return (
    <defs>
      <For each={Array.from({ length: props.count }, (_, stage) => stage)}>
        {(stage) => (
          <pattern id={`${props.id}-${stage}`} width="6" height="6" patternUnits="userSpaceOnUse">
            <rect width="6" height="6" class={`band-ground ground-${stage % marks.length}`} />
            <path d={marks[stage % marks.length] || 'M0,0'} class="band-mark" />
          </pattern>
        )}
      </For>
    </defs>
  );
}

/** The colour of the bands in light colours. */
function lightLeaf(): string {
  return onLightGround((ground) => getComputedStyle(ground).getPropertyValue('--leaf').trim());
}

interface DrawnProps {
  readonly bands: YearBands;
  readonly room: Room;
  readonly id: string;
  readonly boards: number;
}

function Drawn(props: DrawnProps): JSX.Element {
  const base = (): number => props.room.height - props.room.bottom;
  const right = (): number => props.room.width - props.room.right;
  return (
    <>
      <For each={props.bands.bands}>
        {({ stage, outline, label }) => (
          <>
            <path class="band" d={bandPath(outline)} fill={`url(#${props.id}-${stage})`} />
            <Show when={label}>
              {(y) => (
                <text class="band-number" x={right() + 5} y={y()} dy="0.35em">
                  {stage + 1}
                </text>
              )}
            </Show>
          </>
        )}
      </For>
      <For each={props.bands.over}>
        {([from, to]) => (
          <>
            <rect class="over" x={from} y={4} width={Math.max(2, to - from)} height={5} />
            <text class="over-mark" x={from} y={8} dx="-6" dy="0.2em">
              !
            </text>
          </>
        )}
      </For>
      <line class="limit" x1={props.room.left} x2={right()} y1={props.bands.limit} y2={props.bands.limit} />
      <line class="ground-line" x1={props.room.left} x2={right()} y1={base()} y2={base()} />
      <text class="axis" x={props.room.left - 6} y={props.bands.limit} dy="0.35em">
        {whole(props.boards, localFormat)}
      </text>
      <text class="axis" x={props.room.left - 6} y={base()} dy="0.1em">
        0
      </text>
      <For each={namedMonths(props.bands, props.room)}>
        {({ day, x }) => (
          <>
            <line class="ground-line" x1={x} x2={x} y1={base()} y2={base() + 4} />
            <text class="month" x={x + 2} y={base() + 16}>
              {dates.month(day)}
            </text>
          </>
        )}
      </For>
    </>
  );
}
