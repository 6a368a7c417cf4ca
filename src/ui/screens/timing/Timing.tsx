import { createMemo, createSignal, Show, type JSX } from 'solid-js';
import { sentences, textOf } from '../../../present/text/phrase';
import { AnswerText } from '../../kit/sections/AnswerText';
import { Cautions } from '../../kit/sections/Cautions';
import { createBusy } from '../../app/store/settling';
import { LiveText } from '../../kit/sections/LiveText';
import { QuestionScreen } from '../../kit/sections/QuestionScreen';
import { localFormat } from '../../app/preferences/localFormat';
import { allowanceOfSetting, stepSetting, termSetting, timedInputSetting } from '../../app/preferences/settings/timing';
import { MethodLink } from '../../kit/method/MethodLink';
import type { Choice, ScreenProps } from '../../app/screenProps';
import { BatchesPart } from './BatchesPart';
import { DotsPart } from './DotsPart';
import { ForSetUp } from './ForSetUp';
import { IntoModel } from './IntoModel';
import { LearningPart } from './LearningPart';
import { LossesPart } from './LossesPart';
import { createTrials, type KeptTrials } from './keptTrials';
import { ResultsPart } from './ResultsPart';
import { studyOf, type StepFound } from '../../../present/timing/study';
import { targetFor, targetsOf } from '../../../present/timing/targets';
import { termsOf, type TermsEntered, type TimingTerms } from '../../../present/timing/terms';
import { TermsPart } from './TermsPart';
import { moreSentence, stepSentence } from '../../../present/timing/sentences';
import { NoTrials, TrialsButtons } from './TrialsPart';
import { WatchPart } from './WatchPart';
import { WaysPart } from './WaysPart';
import { UndoTrials } from './UndoTrials';
import { timingTexts } from '../../../present/timing/texts';
import '../../kit/sections/answers.css';
import '../../kit/charts/curve.css';
import '../../kit/fields/fields.css';
import './styles.css';

/** Timing: the time of each step, how sure it is, how many more batches to time, and entering it into the model. */
export function Timing(props: ScreenProps): JSX.Element {
  const kept = createTrials(() => props.choice);
  const timing = createMemo(() => termsOf(termsEntered(props.choice)));
  const study = createMemo(() => studyOf(kept.trials(), timing()));
  const chosen = (): StepFound | undefined =>
    study().find(({ step }) => step === props.choice.get(stepSetting)) ?? study()[0];
  const choose = (step: string): void => props.choice.set(stepSetting, step);
  const [isBlank, setBlank] = createSignal(false);
  const names = createMemo(() => {
    const labels = targetsOf(props.store.shape(), props.plan).map(({ cell }) => cell.label);
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
    <QuestionScreen question="timing">
      <ForSetUp choice={props.choice} study={study()} />
      <Show when={chosen()} fallback={<NoTrials choice={props.choice} kept={kept} />}>
        {(found) => <Finding {...props} found={found()} timing={timing()} />}
      </Show>
      <UndoTrials kept={kept} />
      <WatchPart
        choice={props.choice}
        kept={kept}
        step={chosen()?.step ?? ''}
        names={names()}
        choose={choose}
        onBlank={() => setBlank(true)}
      />
      <Show when={chosen()}>
        {(found) => (
          <Answer
            {...props}
            kept={kept}
            study={study()}
            timing={timing()}
            found={found()}
            choose={choose}
            isBlank={isBlank()}
            onShown={() => setBlank(false)}
          />
        )}
      </Show>
      <Fairness />
    </QuestionScreen>
  );
}

function termsEntered(choice: Choice): TermsEntered {
  return {
    allowance: choice.get(termSetting('allowance')),
    allowanceOf: choice.get(allowanceOfSetting),
    within: choice.get(termSetting('within')),
    confidence: choice.get(termSetting('confidence')),
  };
}

/** What the batches of a step count: plants, or the thing that the step's entry is about. */
function nounOf(props: ScreenProps, step: string): string {
  const targets = targetsOf(props.store.shape(), props.plan);
  return targetFor(step, targets, props.choice.get(timedInputSetting(step)))?.noun ?? 'plant';
}

interface FoundProps extends ScreenProps {
  readonly found: StepFound;
  readonly timing: TimingTerms;
}

function Finding(props: FoundProps): JSX.Element {
  const main = createMemo(() => stepSentence(props.found, nounOf(props, props.found.step), props.timing, localFormat));
  const more = createMemo(() => moreSentence(props.found, props.timing, localFormat));
  const busy = createBusy(() => main());
  return (
    <LiveText busy={busy()}>
      <AnswerText main={main()} more={more()} />
    </LiveText>
  );
}

interface AnswerProps extends FoundProps {
  readonly kept: KeptTrials;
  readonly study: readonly StepFound[];
  readonly choose: (step: string) => void;
  /** Whether a blank batch was put in that is still to be shown. */
  readonly isBlank: boolean;
  readonly onShown: () => void;
}

function Answer(props: AnswerProps): JSX.Element {
  const label = createMemo(() =>
    textOf(
      sentences(
        ...props.study.map((found) => stepSentence(found, nounOf(props, found.step), props.timing, localFormat)),
      ),
    ),
  );
  return (
    <>
      <ResultsPart
        choice={props.choice}
        study={props.study}
        timing={props.timing}
        chosen={props.found.step}
        choose={props.choose}
      />
      <DotsPart study={props.study} timing={props.timing} chosen={props.found.step} label={label()} />
      <MethodLink choice={props.choice} entry="timed interval">
        {timingTexts.howFarOff}
      </MethodLink>
      <TermsPart choice={props.choice} timing={props.timing} />
      <IntoModel {...props} />
      <WaysPart {...props} />
      <LearningPart {...props} />
      <LossesPart {...props} />
      <BatchesPart
        choice={props.choice}
        kept={props.kept}
        found={props.found}
        choose={props.choose}
        isBlank={props.isBlank}
        onShown={props.onShown}
      />
      <section class="timing-file" aria-labelledby="timing-file">
        <h3 id="timing-file">{timingTexts.trials}</h3>
        <TrialsButtons choice={props.choice} kept={props.kept} />
      </section>
    </>
  );
}

/** What to bear in mind when timing people. */
function Fairness(): JSX.Element {
  return (
    <section class="timing-care" aria-labelledby="timing-care">
      <h3 id="timing-care">{timingTexts.care}</h3>
      <p>{timingTexts.fairness}</p>
      <Cautions topics={['hands', 'wages']} />
    </section>
  );
}
