import { createMemo, Show, type JSX } from 'solid-js';
import { sentences, textOf } from '../finding/phrase';
import { FindingText } from '../finding/FindingText';
import { Cautions } from '../beds/Cautions';
import { createBusy } from '../calm';
import { Said } from '../finding/Said';
import { here } from '../here';
import { HowWorked } from '../method/HowWorked';
import type { ScreenProps } from '../screen';
import { BatchesPart } from './BatchesPart';
import { DotsPart } from './DotsPart';
import { IntoModel, targetKey } from './IntoModel';
import { createTrials, type KeptTrials } from './keptTrials';
import { ResultsPart } from './ResultsPart';
import { studyOf, type StepFound } from './study';
import { targetFor, targetsOf } from './targets';
import { termsOf, type AskedTerms } from './terms';
import { TermsPart } from './TermsPart';
import { moreTold, stepTold } from './told';
import { NoTrials, TrialsButtons } from './TrialsPart';
import { WatchPart } from './WatchPart';
import { WayBack } from './WayBack';
import '../finding/finding.css';
import '../breakeven/breakeven.css';
import './timing.css';

/** Timing: how long a plant takes at each step, how sure that is, how many more batches to time, and into the model. */
export function Timing(props: ScreenProps): JSX.Element {
  const kept = createTrials(() => props.choice);
  const asked = createMemo(() => termsOf(props.choice));
  const study = createMemo(() => studyOf(kept.trials(), asked()));
  const chosen = (): StepFound | undefined =>
    study().find(({ step }) => step === props.choice.setting('timing step')) ?? study()[0];
  const choose = (step: string): void => props.choice.setSetting('timing step', step);
  const names = createMemo(() => {
    const labels = targetsOf(props.live.shape(), props.plan).map(({ cell }) => cell.label);
    return [
      ...new Set([
        ...study()
          .map(({ step }) => step)
          .filter((step) => step !== ''),
        ...labels,
      ]),
    ];
  });
  return (
    <section class="question-screen timing" aria-labelledby="timing">
      <h2 class="heard" id="timing">
        Timing
      </h2>
      <Show when={chosen()} fallback={<NoTrials choice={props.choice} kept={kept} />}>
        {(found) => <Finding {...props} found={found()} asked={asked()} />}
      </Show>
      <WayBack kept={kept} />
      <WatchPart choice={props.choice} kept={kept} step={chosen()?.step ?? ''} names={names()} choose={choose} />
      <Show when={chosen()}>
        {(found) => <Answer {...props} kept={kept} study={study()} asked={asked()} found={found()} choose={choose} />}
      </Show>
      <Fairness />
    </section>
  );
}

/** What the batches of a step counted: plants, or what the entry that it fills is for. */
function nounOf(props: ScreenProps, step: string): string {
  const targets = targetsOf(props.live.shape(), props.plan);
  return targetFor(step, targets, props.choice.setting(targetKey(step)))?.noun ?? 'plant';
}

interface FoundProps extends ScreenProps {
  readonly found: StepFound;
  readonly asked: AskedTerms;
}

function Finding(props: FoundProps): JSX.Element {
  const main = createMemo(() => stepTold(props.found, nounOf(props, props.found.step), props.asked, here));
  const more = createMemo(() => moreTold(props.found, props.asked, here));
  const busy = createBusy(() => main());
  return (
    <Said busy={busy()}>
      <FindingText main={main()} more={more()} />
    </Said>
  );
}

interface AnswerProps extends FoundProps {
  readonly kept: KeptTrials;
  readonly study: readonly StepFound[];
  readonly choose: (step: string) => void;
}

function Answer(props: AnswerProps): JSX.Element {
  const label = createMemo(() =>
    textOf(sentences(...props.study.map((found) => stepTold(found, nounOf(props, found.step), props.asked, here)))),
  );
  return (
    <>
      <ResultsPart
        choice={props.choice}
        study={props.study}
        asked={props.asked}
        chosen={props.found.step}
        choose={props.choose}
      />
      <DotsPart study={props.study} asked={props.asked} chosen={props.found.step} label={label()} />
      <HowWorked choice={props.choice} entry="timed interval">
        How far the mean may lie off
      </HowWorked>
      <TermsPart choice={props.choice} asked={props.asked} />
      <IntoModel {...props} />
      <BatchesPart kept={props.kept} found={props.found} choose={props.choose} />
      <section class="timing-file" aria-labelledby="timing-file">
        <h3 id="timing-file">The trials</h3>
        <TrialsButtons choice={props.choice} kept={props.kept} />
      </section>
    </>
  );
}

/** What timing people asks of the one who times. */
function Fairness(): JSX.Element {
  return (
    <section class="timing-care" aria-labelledby="timing-care">
      <h3 id="timing-care">Before you time someone</h3>
      <p>
        Tell people that they are timed and why, and time them only if they agree. A rating is a judgement of one
        person’s pace by another: let both see it. Time whole batches with their rests and snags, not the best minute.
        The rules on watching people at work and on piece pay in your place decide.
      </p>
      <Cautions topics={['hands', 'wages']} />
    </section>
  );
}
