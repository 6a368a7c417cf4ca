import { createMemo, createSignal, createUniqueId, onMount, Show, type JSX } from 'solid-js';
import type { Decimal } from '../../../core/number';
import { field, type SheetRow } from '../../../model/sheet';
import { localFormat } from '../../app/preferences/localFormat';
import {
  largeWatchSetting,
  lastLapSetting,
  watchPlantsSetting,
  watchSetting,
  watchStepSetting,
  watchWaySetting,
} from '../../app/preferences/settings/timing';
import { lapOf, lapText, type Lap } from '../../../present/timing/laps';
import { withBatch, withoutBatch } from '../../../present/timing/sheetEdits';
import { timingFields } from '../../../present/timing/texts';
import { typedPlants } from '../../../present/timing/typedPlants';
import { dialText, localDay } from '../../../present/timing/watch';
import { watchTexts } from '../../../present/timing/watchTexts';
import { canStayOn, createWakeLock } from './wakeLock';
import { beginWatch, createTicking, timeSince } from './watchClock';
import type { WatchProps } from './watchProps';
import './wetHands.css';

/** A second press within this many milliseconds is the bounce of a wet finger. */
const bounce = 800;

/**
 * The watch over the whole window: its lower half is one control, which starts it and then ends one batch after the
 * other. The plants of a batch are typed once, before.
 */
export function LargeWatch(props: WatchProps): JSX.Element {
  const watch = createLaps(props);
  const stays = createWakeLock(() => watch.since() !== undefined);
  let dialog: HTMLDialogElement | undefined;
  onMount(() => dialog?.showModal());
  const close = (): void => props.choice.set(largeWatchSetting, false);
  return (
    <dialog class="large-watch" aria-label={watchTexts.large} ref={dialog} onClose={close} onCancel={close}>
      <div class="large-top">
        <div class="large-bar">
          <button type="button" class="word" onClick={close}>
            {watchTexts.close}
          </button>
          <Show when={watch.last()}>
            <button type="button" class="word" onClick={() => watch.takeBack()}>
              {watchTexts.takeLastBack}
            </button>
          </Show>
          <Show when={watch.since() !== undefined}>
            <button type="button" class="word" onClick={() => watch.letGo()}>
              {watchTexts.endHere}
            </button>
          </Show>
        </div>
        <Show when={watch.since()} fallback={<Fields {...props} step={watch.step()} />}>
          {(since) => <Dial since={since()} said={watch.said()} step={watch.step()} />}
        </Show>
        <p class="large-note" role="status">
          {watch.note()}
        </p>
        <Show when={watch.since() !== undefined}>
          <p class="quiet">{stays() ? watchTexts.keptOn : canStayOn ? '' : watchTexts.mayDim}</p>
        </Show>
      </div>
      <button type="button" class="large-control" disabled={!watch.isReady()} onClick={() => watch.press()}>
        <b>{watch.since() === undefined ? watchTexts.begin : watchTexts.done}</b>
        <span>{watch.hint()}</span>
      </button>
    </dialog>
  );
}

/** The last batch that was kept, where it is still the last of the trials. */
function lastLap({ choice, kept }: WatchProps): { readonly lap: Lap; readonly row: SheetRow } | undefined {
  const lap = lapOf(choice.get(lastLapSetting));
  const row = lap && kept.trials().sheet.rows.at(-1);
  return lap && row?.row === lap.row && field(row, 'seconds') === lap.seconds ? { lap, row } : undefined;
}

/** Adds a batch to the trials; gives what is said of it. */
function keepLap({ choice, kept, choose }: WatchProps, step: string, since: number, time: Decimal): string {
  const count = typedPlants(choice.get(watchPlantsSetting), localFormat);
  if (!('text' in count)) return count.fault;
  const [plants, seconds, way] = [count.text, time.toFixed(1), choice.get(watchWaySetting).trim()];
  kept.put(withBatch(kept.trials().sheet, { step, plants, seconds, date: localDay(new Date()), way }));
  choice.set(lastLapSetting, lapText({ row: kept.trials().sheet.rows.at(-1)?.row ?? 0, since, seconds }));
  choose(step);
  return watchTexts.lastWas(localFormat.written(plants), localFormat.written(seconds));
}

/** The state of the large watch, and what its controls do. */
function createLaps(props: WatchProps) {
  const [note, setNote] = createSignal('');
  let pressed = -Infinity;
  const step = (): string => props.choice.get(watchStepSetting) || props.step;
  const plants = createMemo(() => typedPlants(props.choice.get(watchPlantsSetting), localFormat));
  const since = (): number | undefined => {
    const watch = props.choice.get(watchSetting);
    return watch.state === 'running' ? watch.since : undefined;
  };
  const isReady = (): boolean => step().trim() !== '' && 'text' in plants();
  const last = () => lastLap(props);
  const begin = (): void => {
    props.choice.set(watchStepSetting, step().trim());
    props.choice.set(watchSetting, { state: 'running', since: beginWatch() });
  };
  const press = (): void => {
    const now = performance.now();
    if (now - pressed < bounce || !isReady()) return;
    pressed = now;
    const start = since();
    if (start === undefined) {
      begin();
      return;
    }
    const { seconds, doubt } = timeSince(start);
    if (!seconds.gt(0)) {
      setNote(doubt);
      return;
    }
    setNote(keepLap(props, step().trim(), start, seconds));
    begin();
    if (doubt !== '') setNote(doubt);
  };
  const takeBack = (): void => {
    const found = last();
    if (found === undefined) return;
    props.kept.put(withoutBatch(props.kept.trials().sheet, found.row.row));
    props.choice.set(lastLapSetting, '');
    const runs = since() !== undefined;
    if (runs) props.choice.set(watchSetting, { state: 'running', since: found.lap.since });
    setNote(runs ? watchTexts.lastBack : watchTexts.lastOut);
  };
  const letGo = (): void => {
    props.choice.set(watchSetting, { state: 'ready' });
    setNote('');
  };
  const said = (): string =>
    watchTexts.batchOf(step(), props.choice.get(watchPlantsSetting), props.choice.get(watchWaySetting));
  const hint = (): string => {
    if (!isReady()) return watchTexts.needs;
    return since() === undefined ? watchTexts.beginHint : watchTexts.doneHint;
  };
  return { note, step, since, isReady, last, press, takeBack, letGo, said, hint };
}

function Dial(props: { since: number; step: string; said: string }): JSX.Element {
  const time = createTicking(() => props.since);
  return (
    <>
      <p class="dial" role="timer" aria-label={watchTexts.runsFor(props.step)}>
        {dialText(time().seconds, localFormat.marks.decimal)}
      </p>
      <p>{props.said}</p>
      <Show when={time().doubt}>{(doubt) => <p class="message fault">{doubt()}</p>}</Show>
    </>
  );
}

/** What is said of the batches before the first one begins. */
function Fields(props: WatchProps): JSX.Element {
  const id = createUniqueId();
  const plants = (): string => props.choice.get(watchPlantsSetting);
  const fault = (): string => {
    const read = typedPlants(plants(), localFormat);
    return plants().trim() !== '' && 'fault' in read ? read.fault : '';
  };
  return (
    <div class="large-fields">
      <LargeField
        label={timingFields.step}
        example={watchTexts.stepExample}
        text={props.step}
        take={(text) => props.choice.set(watchStepSetting, text)}
      />
      <LargeField
        label={watchTexts.plantsEach}
        text={plants()}
        faultId={fault() === '' ? undefined : id}
        isWhole
        take={(text) => props.choice.set(watchPlantsSetting, text)}
      />
      <LargeField
        label={watchTexts.way}
        example={watchTexts.wayExample}
        text={props.choice.get(watchWaySetting)}
        take={(text) => props.choice.set(watchWaySetting, text)}
      />
      <Show when={fault()}>
        <p class="message fault" id={id}>
          {fault()}
        </p>
      </Show>
    </div>
  );
}

interface LargeFieldProps {
  readonly label: string;
  readonly example?: string;
  readonly text: string;
  /** Id of what says why the text cannot be used; undefined where it can. */
  readonly faultId?: string | undefined;
  /** Whether a whole number is asked for. */
  readonly isWhole?: boolean;
  readonly take: (text: string) => void;
}

function LargeField(props: LargeFieldProps): JSX.Element {
  return (
    <label>
      <span>{props.label}</span>
      <input
        type="text"
        autocomplete="off"
        inputmode={props.isWhole === true ? 'numeric' : undefined}
        placeholder={props.example}
        value={props.text}
        aria-invalid={props.faultId === undefined ? undefined : 'true'}
        aria-describedby={props.faultId}
        onInput={(event) => props.take(event.currentTarget.value)}
      />
    </label>
  );
}
