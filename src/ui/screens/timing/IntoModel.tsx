import { createMemo, createSignal, createUniqueId, For, Index, Show, type Accessor, type JSX } from 'solid-js';
import type { Decimal } from '../../../core/number';
import { RadioRow } from '../../kit/choosers/RadioRow';
import type { Phrase } from '../../../present/text/phrase';
import { Sentence } from '../../kit/sections/Sentence';
import { endText } from '../../../present/text/rangeEnds';
import { localFormat } from '../../app/preferences/localFormat';
import { timedInputSetting, timeUsedSetting } from '../../app/preferences/settings/timing';
import { printedUnit } from '../../../present/text/printedUnit';
import type { ScreenProps } from '../../app/screenProps';
import { Link } from '../../kit/Link';
import { keepFocus } from '../../kit/keepFocus';
import { editsOf, isPut, offerOf, putSentence, type TimeOffer, type TimeUsed } from '../../../present/timing/intoModel';
import type { StepFound } from '../../../present/timing/study';
import { hasOwnAllowance, noTarget, targetFor, targetsOf, type TimingTarget } from '../../../present/timing/targets';
import type { TimingTerms } from '../../../present/timing/terms';
import { stepName } from '../../../present/timing/sentences';
import { allowanceText, intoModelTexts, noInputText } from '../../../present/timing/intoModelTexts';
import { commonTexts } from '../../../present/text/commonTexts';

interface IntoModelProps extends ScreenProps {
  readonly study: readonly StepFound[];
  readonly timing: TimingTerms;
}

/** A time that was entered into the model; it is forgotten with the next edit. */
interface Put {
  readonly sentence: Phrase;
  readonly version: number;
}

/** The timed values beside the model's own numbers, each with a button that enters it. */
export function IntoModel(props: IntoModelProps): JSX.Element {
  const [done, setDone] = createSignal<Put>();
  const targets = createMemo(() => targetsOf(props.store.shape(), props.plan));
  const own = createMemo(() => hasOwnAllowance(props.store.shape()));
  const used = (): TimeUsed => usedOf(props.choice.get(timeUsedSetting), own(), props.timing);
  const timed = createMemo(() => props.study.filter(({ time }) => time !== undefined));
  const put = (offer: TimeOffer, withRange: boolean): void => {
    const model = props.store.model();
    props.store.finish();
    for (const edit of editsOf(offer, model, props.plan, withRange, new Date())) props.store.edit(edit);
    props.store.finish();
    setDone({ sentence: putSentence(offer, withRange, localFormat), version: props.store.version() });
  };
  const standing = (): Put | undefined => (done()?.version === props.store.version() ? done() : undefined);
  const planName = (): string => props.store.shape().plans[props.plan]?.name ?? '';
  return (
    <section class="timing-model" aria-labelledby="timing-model">
      <h3 id="timing-model">{intoModelTexts.heading}</h3>
      <Show when={targets().length > 0} fallback={<p>{noInputText(planName())}</p>}>
        <RadioRow
          legend={intoModelTexts.use}
          chosen={used()}
          choose={(use) => props.choice.set(timeUsedSetting, use)}
          options={[
            { value: 'mean', label: intoModelTexts.mean },
            { value: 'standard', label: intoModelTexts.standard },
          ]}
        />
        <p class="quiet">{allowanceText(own())}</p>
        <div class="put-in" role="status">
          <Show when={standing()} keyed>
            {({ sentence }) => (
              <p>
                <Sentence phrase={sentence} />{' '}
                <button type="button" class="link" ref={keepFocus} onClick={() => props.store.undo()}>
                  {commonTexts.takeBack}
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
        <p class="quiet">{intoModelTexts.rangeExplained}</p>
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

/** One step: the input that it fills, today's number there, and the timed value. */
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
          <span class="heard">{intoModelTexts.entryFor(stepName(step()))}</span>
          <select onChange={(event) => props.choice.set(timedInputSetting(step()), event.currentTarget.value)}>
            <option value={noTarget} selected={target() === undefined}>
              {intoModelTexts.noEntry}
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
  const end = (number: Decimal): string => endText(number, props.offer.cell, localFormat);
  return (
    <>
      <p class="offer-values">
        <Sentence phrase={intoModelTexts.besideTimed(end(props.offer.today), localFormat.full(props.offer.value))} />{' '}
        <span class="unit">{unit()}</span>
      </p>
      <p class="offer-buttons">
        <Show when={!isPut(props.offer, false)} fallback={<span class="quiet">{intoModelTexts.hasIt}</span>}>
          <button type="button" class="press" onClick={() => props.put(props.offer, false)}>
            {intoModelTexts.useValue(value())}
          </button>
        </Show>
        <Show when={props.offer.range} fallback={<span class="quiet">{props.offer.noRange}</span>}>
          {(ends) => (
            <Show when={!isPut(props.offer, true)}>
              <button type="button" class="word" onClick={() => props.put(props.offer, true)}>
                {intoModelTexts.useWithRange(end(ends()[0]), end(ends()[1]))}
              </button>
            </Show>
          )}
        </Show>
        <Link onPress={() => props.goTo(props.offer.cell.id)}>{commonTexts.goToEntry}</Link>
      </p>
    </>
  );
}
