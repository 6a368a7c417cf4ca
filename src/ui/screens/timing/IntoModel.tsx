import { createMemo, createSignal, createUniqueId, For, Index, Show, type Accessor, type JSX } from 'solid-js';
import { RadioRow } from '../../kit/choosers/RadioRow';
import type { Phrase } from '../../../present/text/phrase';
import { Sentence } from '../../kit/sections/Sentence';
import { endText } from '../../../present/text/rangeEnds';
import { localFormat } from '../../app/preferences/localFormat';
import { timedInputSetting, timeUsedSetting } from '../../app/preferences/settings/timing';
import { printedUnit } from '../../../present/text/printedUnit';
import type { ScreenProps } from '../../app/screenProps';
import { Link } from '../../kit/Link';
import { keepFocus } from './keepFocus';
import { editsOf, isPut, offerOf, putSentence, type TimeOffer, type TimeUsed } from '../../../present/timing/intoModel';
import type { StepFound } from '../../../present/timing/study';
import { hasOwnAllowance, noTarget, targetFor, targetsOf, type TimingTarget } from '../../../present/timing/targets';
import type { TimingTerms } from '../../../present/timing/terms';
import { stepName } from '../../../present/timing/sentences';

interface IntoModelProps extends ScreenProps {
  readonly study: readonly StepFound[];
  readonly timing: TimingTerms;
}

/** What was put into the model, until anything else is changed. */
interface Put {
  readonly sentence: Phrase;
  readonly version: number;
}

/** The times beside the model's own numbers, each to be put in by a button. */
export function IntoModel(props: IntoModelProps): JSX.Element {
  const [done, setDone] = createSignal<Put>();
  const targets = createMemo(() => targetsOf(props.store.shape(), props.plan));
  const own = createMemo(() => hasOwnAllowance(props.store.shape()));
  const used = (): TimeUsed => usedOf(props.choice.get(timeUsedSetting), own(), props.timing);
  const timed = createMemo(() => props.study.filter(({ time }) => time !== undefined));
  const put = (offer: TimeOffer, withRange: boolean): void => {
    const model = props.store.model();
    props.store.finish();
    for (const edit of editsOf(offer, model, props.plan, withRange)) props.store.edit(edit);
    props.store.finish();
    setDone({ sentence: putSentence(offer, withRange, localFormat), version: props.store.version() });
  };
  const standing = (): Put | undefined => (done()?.version === props.store.version() ? done() : undefined);
  const planName = (): string => props.store.shape().plans[props.plan]?.name ?? '';
  return (
    <section class="timing-model" aria-labelledby="timing-model">
      <h3 id="timing-model">Into the model</h3>
      <Show
        when={targets().length > 0}
        fallback={<p>No input of {planName() || 'this model'} is a time for one plant or board, such as s/plant.</p>}>
        <RadioRow
          legend="Use the"
          chosen={used()}
          choose={(use) => props.choice.set(timeUsedSetting, use)}
          options={[
            { value: 'mean', label: 'mean time' },
            { value: 'standard', label: 'standard time' },
          ]}
        />
        <p class="quiet">
          {own()
            ? 'This model has an allowance of its own and lengthens every time by it: give it the mean, or rest counts twice.'
            : 'This model has no entry for an allowance: the standard time brings rest and waiting with it.'}
        </p>
        <div class="put-in" role="status">
          <Show when={standing()} keyed>
            {({ sentence }) => (
              <p>
                <Sentence phrase={sentence} />{' '}
                <button type="button" class="link" ref={keepFocus} onClick={() => props.store.undo()}>
                  Take it back
                </button>
              </p>
            )}
          </Show>
        </div>
        <div class="offers">
          <Index each={timed()}>
            {(found) => <StepOffer {...props} found={found} targets={targets()} used={used()} put={put} />}
          </Index>
        </div>
        <p class="quiet">
          A range from here is where the mean of many batches may lie, not how far single batches do. Undo takes either
          back in one step.
        </p>
      </Show>
    </section>
  );
}

function usedOf(chosen: TimeUsed | undefined, own: boolean, { hasStandardTime }: TimingTerms): TimeUsed {
  if (!hasStandardTime) return 'mean';
  return chosen ?? (own ? 'mean' : 'standard');
}

interface StepOfferProps extends IntoModelProps {
  readonly found: Accessor<StepFound>;
  readonly targets: readonly TimingTarget[];
  readonly used: TimeUsed;
  readonly put: (offer: TimeOffer, withRange: boolean) => void;
}

/** One step: which input it fills, what stands there today, what was timed. */
function StepOffer(props: StepOfferProps): JSX.Element {
  const id = createUniqueId();
  const step = (): string => props.found().step;
  const target = createMemo(() => targetFor(step(), props.targets, props.choice.get(timedInputSetting(step()))));
  const offer = createMemo((): TimeOffer | undefined => {
    const { time } = props.found();
    const to = target();
    return time && to && offerOf(props.store.model(), props.plan, to.cell, time, props.used, props.timing);
  });
  return (
    <div class="offer" role="group" aria-labelledby={id}>
      <p class="offer-head">
        <span id={id}>{stepName(step())}</span>
        <label>
          <span class="heard">Entry for {stepName(step())}</span>
          <select onChange={(event) => props.choice.set(timedInputSetting(step()), event.currentTarget.value)}>
            <option value={noTarget} selected={target() === undefined}>
              no entry
            </option>
            <For each={props.targets}>
              {({ cell }) => (
                <option value={cell.name} selected={cell.name === target()?.cell.name}>
                  {cell.label}
                </option>
              )}
            </For>
          </select>
        </label>
      </p>
      <Show when={offer()}>{(found) => <OfferLine {...props} offer={found()} />}</Show>
    </div>
  );
}

function OfferLine(props: StepOfferProps & { offer: TimeOffer }): JSX.Element {
  const unit = (): string => printedUnit(props.offer.cell.unitText);
  const value = (): string => `${localFormat.full(props.offer.value)}\u00a0${unit()}`;
  const range = (): string | undefined => {
    const { range: ends, cell } = props.offer;
    return ends && `${endText(ends[0], cell, localFormat)} to ${endText(ends[1], cell, localFormat)}`;
  };
  return (
    <>
      <p class="offer-values">
        In the model <b>{endText(props.offer.today, props.offer.cell, localFormat)}</b>, timed{' '}
        <b>{localFormat.full(props.offer.value)}</b> <span class="unit">{unit()}</span>
      </p>
      <p class="offer-buttons">
        <Show when={!isPut(props.offer, false)} fallback={<span class="quiet">The model has it.</span>}>
          <button type="button" class="press" onClick={() => props.put(props.offer, false)}>
            Use {value()}
          </button>
        </Show>
        <Show when={range()} fallback={<span class="quiet">{props.offer.noRange}</span>}>
          {(ends) => (
            <Show when={!isPut(props.offer, true)}>
              <button type="button" class="word" onClick={() => props.put(props.offer, true)}>
                Use it with its range {ends()}
              </button>
            </Show>
          )}
        </Show>
        <Link onPress={() => props.goTo(props.offer.cell.id)}>Go to the entry</Link>
      </p>
    </>
  );
}
