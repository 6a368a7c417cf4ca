import { createMemo, Show, type JSX } from 'solid-js';
import type { LostShare } from '../../../trade/lostShare';
import { localFormat } from '../../app/preferences/localFormat';
import { lossInputSetting } from '../../app/preferences/settings/timing';
import { MethodLink } from '../../kit/method/MethodLink';
import { Sentence } from '../../kit/sections/Sentence';
import type { TimeOffer } from '../../../present/timing/intoModel';
import { lossSentence, shareOffer, shareTargets } from '../../../present/timing/losses';
import { lossesTexts } from '../../../present/timing/lossesTexts';
import { stepName } from '../../../present/timing/sentences';
import { targetFor } from '../../../present/timing/targets';
import { createPutting, OfferLine, PutDone } from './OfferLine';
import type { StepPartProps } from './stepPart';
import { TargetChooser } from './TargetChooser';

/** The lost share of the chosen step with its interval, and into the model with it. */
export function LossesPart(props: StepPartProps): JSX.Element {
  return (
    <section class="timing-losses" aria-labelledby="timing-losses">
      <h3 id="timing-losses">{lossesTexts.heading}</h3>
      <Show when={props.found.losses} fallback={<p>{lossesTexts.none}</p>}>
        {(losses) => <Lost {...props} losses={losses()} />}
      </Show>
    </section>
  );
}

function Lost(props: StepPartProps & { losses: LostShare }): JSX.Element {
  const targets = createMemo(() => shareTargets(props.store.shape(), props.plan));
  const setting = createMemo(() => lossInputSetting(props.found.step));
  const target = createMemo(() => targetFor(props.found.step, targets(), props.choice.get(setting())));
  const offer = createMemo((): TimeOffer | undefined => {
    const to = target();
    return to && shareOffer(props.store.model(), props.plan, to, props.losses);
  });
  const putting = createPutting(props);
  return (
    <>
      <p class="said-part" role="status">
        <Sentence phrase={lossSentence(props.found.step, props.losses, props.timing, localFormat)} />
      </p>
      <p class="quiet">{lossesTexts.caution}</p>
      <Show when={targets().length > 0} fallback={<p>{lossesTexts.noInput}</p>}>
        <PutDone store={props.store} putting={putting} />
        <div class="offer">
          <TargetChooser
            name={stepName(props.found.step)}
            label={lossesTexts.entryFor(stepName(props.found.step))}
            targets={targets()}
            chosen={target()}
            choose={(name) => props.choice.set(setting(), name)}
          />
          <Show when={offer()}>{(found) => <OfferLine offer={found()} put={putting.put} goTo={props.goTo} />}</Show>
        </div>
      </Show>
      <MethodLink choice={props.choice} entry="lost share">
        {lossesTexts.method}
      </MethodLink>
    </>
  );
}
