import { createEffect, createSignal, createUniqueId, For, Match, Show, Switch, type JSX } from 'solid-js';
import type { Decimal } from '../../../core/number';
import { localFormat } from '../../app/preferences/localFormat';
import {
  largeWatchSetting,
  watchPlantsSetting,
  watchSetting,
  watchStepSetting,
} from '../../app/preferences/settings/timing';
import { LargeWatch } from './LargeWatch';
import { beginWatch, createTicking, timeSince } from './watchClock';
import type { WatchProps } from './watchProps';
import { withBatch } from '../../../present/timing/sheetEdits';
import { dialText, doubtOf, localDay, stoppedAfter, type WatchState } from '../../../present/timing/watch';
import { createClockText } from '../../../present/timing/clockText';
import { typedPlants } from '../../../present/timing/typedPlants';
import { watchTexts } from '../../../present/timing/watchTexts';
import { timingFields } from '../../../present/timing/texts';
import { commonTexts } from '../../../present/text/commonTexts';

const clock = createClockText(localFormat.locale);

function clockText(at: number): string {
  return clock(at, Date.now());
}

/** A watch for one batch, and fields to enter a batch that was timed otherwise. */
export function WatchPart(props: WatchProps & { onBlank: () => void }): JSX.Element {
  const watch = (): WatchState => props.choice.get(watchSetting);
  const step = (): string => props.choice.get(watchStepSetting) || props.step;
  const moved = (): void => queueMicrotask(() => section?.querySelector<HTMLElement>('[data-next]')?.focus());
  let section: HTMLElement | undefined;
  const start = (): void => {
    props.choice.set(watchStepSetting, step().trim());
    props.choice.set(watchSetting, { state: 'running', since: beginWatch() });
    moved();
  };
  const [clockDoubt, setClockDoubt] = createSignal('');
  const stop = (): void => {
    const { seconds, doubt } = timeSince(running(watch()) ?? Date.now());
    setClockDoubt(doubt);
    props.choice.set(watchSetting, stoppedAfter(watch(), seconds));
    moved();
  };
  const letGo = (): void => {
    props.choice.set(watchSetting, { state: 'ready' });
    props.choice.set(watchPlantsSetting, '');
    moved();
  };
  const enter = (texts: Readonly<Record<string, string>>): void => {
    const name = step().trim();
    props.kept.put(withBatch(props.kept.trials().sheet, { step: name, date: localDay(new Date()), ...texts }));
    props.choice.set(watchStepSetting, '');
    props.choose(name);
    if (!('plants' in texts)) props.onBlank();
  };
  return (
    <section class="timing-watch" aria-labelledby="timing-watch" ref={section}>
      <h3 id="timing-watch">{watchTexts.heading}</h3>
      <Switch>
        <Match when={watch().state === 'ready'}>
          <Ready {...props} step={step()} onStart={start} onEnter={() => enter({})} />
        </Match>
        <Match when={running(watch())}>
          {(since) => <Running since={since()} step={step()} onStop={stop} onLetGo={letGo} />}
        </Match>
        <Match when={stopped(watch())}>
          {(run) => (
            <Stopped
              {...props}
              since={run().since}
              seconds={run().seconds}
              clockDoubt={clockDoubt()}
              step={step()}
              onLetGo={letGo}
              onPlants={(plants) => {
                enter({ plants, seconds: run().seconds.toFixed(1) });
                letGo();
              }}
            />
          )}
        </Match>
      </Switch>
      <LargeWay {...props} />
    </section>
  );
}

/** The way to the watch over the whole window. */
function LargeWay(props: WatchProps): JSX.Element {
  return (
    <Show when={props.choice.get(watchSetting).state !== 'stopped'}>
      <p>
        <button type="button" class="word large-way" onClick={() => props.choice.set(largeWatchSetting, true)}>
          {watchTexts.large}
        </button>
      </p>
      <Show when={props.choice.get(largeWatchSetting)}>
        <LargeWatch {...props} />
      </Show>
    </Show>
  );
}

function running(watch: WatchState): number | undefined {
  return watch.state === 'running' ? watch.since : undefined;
}

function stopped(watch: WatchState): Extract<WatchState, { state: 'stopped' }> | undefined {
  return watch.state === 'stopped' ? watch : undefined;
}

/** The watch before a batch: the choice of the step, and of how it is timed. */
function Ready(props: WatchProps & { onStart: () => void; onEnter: () => void }): JSX.Element {
  const isNameless = (): boolean => props.step.trim() === '';
  return (
    <>
      <div class="watch-line">
        <StepField {...props} onText={(text) => props.choice.set(watchStepSetting, text)} />
        <button type="button" class="press" data-next disabled={isNameless()} onClick={() => props.onStart()}>
          {watchTexts.start}
        </button>
        <button type="button" class="word" disabled={isNameless()} onClick={() => props.onEnter()}>
          {watchTexts.byHand}
        </button>
      </div>
      <Show when={isNameless()}>
        <p class="hint">{watchTexts.nameFirst}</p>
      </Show>
    </>
  );
}

function StepField(props: WatchProps & { onText: (text: string) => void }): JSX.Element {
  const id = createUniqueId();
  return (
    <label class="step-field">
      <span class="chooser-label">{timingFields.step}</span>
      <input
        type="text"
        list={id}
        autocomplete="off"
        placeholder={watchTexts.stepExample}
        value={props.step}
        onInput={(event) => props.onText(event.currentTarget.value)}
      />
      <datalist id={id}>
        <For each={props.names}>{(name) => <option value={name} />}</For>
      </datalist>
    </label>
  );
}

function Running(props: { since: number; step: string; onStop: () => void; onLetGo: () => void }): JSX.Element {
  const time = createTicking(() => props.since);
  return (
    <>
      <div class="watch-line">
        <p class="dial" role="timer" aria-label={watchTexts.runsFor(props.step)}>
          {dialText(time().seconds, localFormat.marks.decimal)}
        </p>
        <button type="button" class="press" data-next onClick={() => props.onStop()}>
          {commonTexts.stop}
        </button>
        <button type="button" class="word" onClick={() => props.onLetGo()}>
          {watchTexts.letGo}
        </button>
      </div>
      <p class="quiet">{watchTexts.since(props.step, clockText(props.since))}</p>
      <Show when={time().doubt}>{(doubt) => <p class="message fault">{doubt()}</p>}</Show>
    </>
  );
}

interface StoppedProps extends WatchProps {
  readonly since: number;
  readonly seconds: Decimal;
  /** What the clocks said when it was stopped; blank for nothing, and after the page was loaded again. */
  readonly clockDoubt: string;
  readonly onPlants: (plants: string) => void;
  readonly onLetGo: () => void;
}

/** The watch after a batch: it asks for the plants. */
function Stopped(props: StoppedProps): JSX.Element {
  const faultId = createUniqueId();
  const [fault, setFault] = createSignal('');
  const plants = (): string => props.choice.get(watchPlantsSetting);
  const canAdd = (): boolean => props.seconds.gt(0);
  const add = (event: Event): void => {
    event.preventDefault();
    const found = typedPlants(plants(), localFormat);
    setFault('fault' in found ? found.fault : '');
    if ('text' in found && canAdd()) props.onPlants(found.text);
  };
  createEffect(() => {
    if (fault() !== '' && 'text' in typedPlants(plants(), localFormat)) setFault('');
  });
  return (
    <form onSubmit={add}>
      <p class="dial">{dialText(props.seconds, localFormat.marks.decimal)}</p>
      <p class="quiet">
        {watchTexts.fromTo(clockText(props.since), clockText(props.since + props.seconds.toNumber() * 1000))}
      </p>
      <p class="watch-line">
        <label class="asked-number">
          <span>{watchTexts.plants(props.step)}</span>{' '}
          <input
            type="text"
            inputmode="numeric"
            autocomplete="off"
            data-next
            value={plants()}
            aria-invalid={fault() === '' ? undefined : 'true'}
            aria-describedby={fault() === '' ? undefined : faultId}
            onInput={(event) => props.choice.set(watchPlantsSetting, event.currentTarget.value)}
          />
        </label>
        <button type="submit" class="press" disabled={!canAdd()}>
          {watchTexts.add}
        </button>
        <button type="button" class="word" onClick={() => props.onLetGo()}>
          {watchTexts.letGo}
        </button>
      </p>
      <Show when={fault()}>
        <p class="message fault" id={faultId}>
          {fault()}
        </p>
      </Show>
      <Show when={props.clockDoubt || doubtOf(props.seconds)}>{(doubt) => <p class="message fault">{doubt()}</p>}</Show>
    </form>
  );
}
