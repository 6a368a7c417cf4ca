import { createMemo, For, Show, type JSX } from 'solid-js';
import type { GroupMark } from '../../../present/together/groupMarks';
import { boxPlan, fittedValue, type EntryBox } from '../../../present/together/boxes';
import { boxName, valueInBox, valueOfEntry } from '../../../present/together/boxText';
import type { PlacedBox } from '../../../present/together/layout';
import { readsLeftward, type MeasureText } from '../../../present/together/wrap';
import { letterOf } from '../../../present/text/planLetter';
import { usePage } from '../../app/pageContext';
import { localFormat } from '../../app/preferences/localFormat';
import type { Detail } from './zoom';

interface EntryBoxViewProps {
  /** Undefined, as its place, in the moment in which the box goes. */
  readonly box: EntryBox | undefined;
  readonly place: PlacedBox | undefined;
  readonly mark: GroupMark | undefined;
  readonly measure: MeasureText;
  readonly detail: Detail;
  readonly isMiddle: boolean;
  /** Whether the Tab key lands on it. */
  readonly isStop: boolean;
  readonly isInput: boolean;
  readonly onPress: () => void;
  readonly onHeld: () => void;
  readonly onPointed: (isOver: boolean) => void;
}

const { margin, stripe, rim, groupLine, labelLine, valueLine, width } = boxPlan;
const left = stripe + margin;
const right = width - margin;
/** From the top of a line to the feet of its letters. */
const foot = 12;

/** An entry as a box: its group, its label, its value in each plan. Pressed, it moves to the middle. */
export function EntryBoxView(props: EntryBoxViewProps): JSX.Element {
  const box = createMemo<EntryBox | undefined>((before) => props.box ?? before);
  const place = createMemo<PlacedBox | undefined>((before) => props.place ?? before);
  return (
    <Show when={box()}>
      {(one) => <Show when={place()}>{(at) => <Framed {...props} box={one()} place={at()} />}</Show>}
    </Show>
  );
}

interface FramedProps extends EntryBoxViewProps {
  readonly box: EntryBox;
  readonly place: PlacedBox;
}

function Framed(props: FramedProps): JSX.Element {
  const { store } = usePage();
  const cell = (): EntryBox['cell'] => props.box.cell;
  const name = createMemo(() => {
    const values = props.box.columns.map((plan) => valueOfEntry(store.shown(plan, cell().id), cell(), localFormat));
    return boxName(cell().label, values, props.mark?.group ?? '', props.isMiddle);
  });
  return (
    <g
      class="together-box"
      classList={{ middle: props.isMiddle, headline: cell().role === 'headline' }}
      data-entry={cell().id}
      data-tint={props.mark?.tint}
      role="button"
      aria-label={name()}
      tabindex={props.isStop ? 0 : -1}
      transform={`translate(${props.place.x - props.box.width / 2} ${props.place.y - props.box.height / 2})`}
      onClick={() => props.onPress()}
      onFocusIn={() => props.onHeld()}
      onPointerEnter={() => props.onPointed(true)}
      onPointerLeave={() => props.onPointed(false)}>
      <title>{cell().label}</title>
      <rect class="frame" width={props.box.width} height={props.box.height} rx="2" />
      <rect class="stripe ground" width={stripe} height={props.box.height} />
      <rect
        class="stripe"
        width={stripe}
        height={props.box.height}
        fill={`url(#together-pattern-${props.mark?.pattern ?? 0}-${props.mark?.tint ?? 0})`}
      />
      <Show when={props.detail === 'all'}>
        <Small {...props} />
      </Show>
      <Show when={props.detail === 'labels'}>
        <LargeLabel box={props.box} />
      </Show>
    </g>
  );
}

/** The label alone, in type that can be read in a small picture. */
function LargeLabel(props: { box: EntryBox }): JSX.Element {
  const top = (): number => (props.box.height - props.box.largeLabel.length * boxPlan.largeLine) / 2;
  return (
    <For each={props.box.largeLabel}>
      {(line, i) => (
        <Line
          class="label"
          text={line}
          isLeftward={readsLeftward(props.box.cell.label)}
          y={top() + i() * boxPlan.largeLine + boxPlan.largeType - boxPlan.type}
          size={boxPlan.largeType}
        />
      )}
    </For>
  );
}

/** All that a box says, in usual type. */
function Small(props: FramedProps): JSX.Element {
  const top = (): number => rim + (props.box.group === '' ? 0 : groupLine);
  return (
    <>
      <Show when={props.box.group}>
        <Line class="group" text={props.box.group} y={rim} size={boxPlan.smallType} />
      </Show>
      <For each={props.box.label}>
        {(line, i) => (
          <Line
            class="label"
            text={line}
            isLeftward={readsLeftward(props.box.cell.label)}
            y={top() + i() * labelLine}
            size={boxPlan.type}
          />
        )}
      </For>
      <For each={props.box.columns}>
        {(plan, i) => (
          <ValueLine
            box={props.box}
            plan={plan}
            letter={letterOf(i(), props.box.columns.length)}
            measure={props.measure}
            isInput={props.isInput}
            y={top() + props.box.label.length * labelLine + i() * valueLine}
          />
        )}
      </For>
    </>
  );
}

/** A line of text that begins where its script begins. */
function Line(props: { class: string; text: string; y: number; size: number; isLeftward?: boolean }): JSX.Element {
  return (
    <text
      class={props.class}
      x={props.isLeftward === true ? right : left}
      y={props.y + foot}
      font-size={`${props.size}`}
      direction={props.isLeftward === true ? 'rtl' : 'ltr'}>
      {props.text}
    </text>
  );
}

interface ValueLineProps {
  readonly box: EntryBox;
  readonly plan: number;
  readonly letter: string;
  readonly measure: MeasureText;
  readonly isInput: boolean;
  readonly y: number;
}

function ValueLine(props: ValueLineProps): JSX.Element {
  const { store } = usePage();
  const shown = createMemo(() => store.shown(props.plan, props.box.cell.id));
  const text = createMemo(() =>
    fittedValue(valueInBox(shown(), props.box.cell, localFormat), props.letter, props.measure),
  );
  return (
    <>
      <Show when={props.letter}>
        <text
          class="letter"
          data-letter={props.letter}
          x={left}
          y={props.y + foot + 2}
          font-size={`${boxPlan.smallType}`}>
          {props.letter}
        </text>
      </Show>
      <text
        class="value"
        classList={{ faulty: shown().error !== undefined }}
        x={right}
        y={props.y + foot + 2}
        font-size={`${boxPlan.type}`}
        text-anchor="end">
        <tspan>{text().value}</tspan>
        <tspan class="unit" font-size={`${boxPlan.smallType}`} dx={text().unit === '' ? 0 : 3}>
          {text().unit}
        </tspan>
      </text>
      <Show when={props.isInput && shown().content?.kind === 'input'}>
        <line class="hairline" x1={width / 2} x2={right} y1={props.y + foot + 5.5} y2={props.y + foot + 5.5} />
      </Show>
    </>
  );
}
