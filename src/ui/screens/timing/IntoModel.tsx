import { createMemo, createUniqueId, Index, Show, type Accessor, type JSX } from 'solid-js';
import { RadioRow } from '../../kit/choosers/RadioRow';
import { timedInputSetting, timeUsedSetting } from '../../app/preferences/settings/timing';
import type { ScreenProps } from '../../app/screenProps';
import { offerOf, timeUsed, type TimeOffer, type TimeUsed } from '../../../present/timing/intoModel';
import { createPutting, OfferLine, PutDone, type Putting } from './OfferLine';
import { TargetChooser } from './TargetChooser';
import type { StepFound } from '../../../present/timing/study';
import { hasOwnAllowance, targetFor, targetsOf, type TimingTarget } from '../../../present/timing/targets';
import type { TimingTerms } from '../../../present/timing/terms';
import { stepName } from '../../../present/timing/sentences';
import { allowanceText, intoModelTexts, noInputText } from '../../../present/timing/intoModelTexts';

interface IntoModelProps extends ScreenProps {
  readonly study: readonly StepFound[];
  readonly timing: TimingTerms;
}

/** The timed values beside the model's own numbers, each with a button that enters it. */
export function IntoModel(props: IntoModelProps): JSX.Element {
  const targets = createMemo(() => targetsOf(props.store.shape(), props.plan));
  const own = createMemo(() => hasOwnAllowance(props.store.shape()));
  const used = (): TimeUsed => timeUsed(props.choice.get(timeUsedSetting), own(), props.timing);
  const timed = createMemo(() => props.study.filter(({ time }) => time !== undefined));
  const putting = createPutting(props);
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
        <PutDone store={props.store} putting={putting} />
        <div class="offers">
          <Index each={timed()}>
            {(found) => <StepOffer {...props} found={found} targets={targets()} used={used()} put={putting.put} />}
          </Index>
        </div>
        <p class="quiet">{intoModelTexts.rangeExplained}</p>
      </Show>
    </section>
  );
}

interface StepOfferProps extends IntoModelProps {
  readonly found: Accessor<StepFound>;
  readonly targets: readonly TimingTarget[];
  readonly used: TimeUsed;
  readonly put: Putting['put'];
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
      <TargetChooser
        name={stepName(step())}
        nameId={id}
        label={intoModelTexts.entryFor(stepName(step()))}
        targets={props.targets}
        chosen={target()}
        choose={(name) => props.choice.set(timedInputSetting(step()), name)}
      />
      <Show when={offer()}>{(found) => <OfferLine offer={found()} put={props.put} goTo={props.goTo} />}</Show>
    </div>
  );
}
