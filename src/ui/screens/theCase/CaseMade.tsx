import { createMemo, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import type { CautionTopic } from '../../../present/page/cautions';
import { hasFurther } from '../../../present/allPlans/plans';
import { failingChecks, type Failing } from '../../../present/page/failingChecks';
import { namesAmong } from '../../../present/text/entryNames';
import { createSight } from '../../kit/sections/sight';
import { localFormat } from '../../app/preferences/localFormat';
import { cautionTopics } from '../../../present/page/cautionTopics';
import type { ScreenProps } from '../../app/screenProps';
import { demandsOf, type PlanDemand } from '../../../present/theCase/demands';
import { AssumedPart } from './AssumedPart';
import { usePage } from '../../app/pageContext';
import { HiddenMoneyList } from '../../kit/hiddenMoney/HiddenMoneyList';
import { Limits, Warnings } from './CaseNotes';
import { OtherPlans } from './OtherPlans';
import { Verdict } from './Verdict';
import type { CaseBudget } from '../../../present/theCase/caseOf';
import { ComparedTable } from './ComparedTable';
import { HangsOn } from './HangsOn';
import { inventedNotice } from '../../../present/theCase/inventedFigures';
import { withNetChange } from '../../../present/theCase/netChange';
import { ownWords } from './ownWords';
import { OwnWordsView } from './OwnWordsView';
import type { PlanPair } from '../../../present/theCase/comparedEntries';
import { createStudies, type Studies } from './studies';
import { AnswerAndBudget } from './AnswerAndBudget';
import { SaveLive } from './SaveLive';
import { YearsSection } from './YearsSection';
import { createYearsSettings, type YearsSettings } from './yearsSettings';
import { caseTexts } from '../../../present/theCase/texts';

interface CaseMadeProps extends ScreenProps {
  readonly made: CaseBudget;
  /** The plan that is given up. */
  readonly from: number;
}

/** The case where there is a budget. */
export function CaseMade(props: CaseMadeProps): JSX.Element {
  const { settled, isSent } = usePage();
  const plans = createMemo((): [number, number] => [props.from, props.plan], undefined, {
    equals: (a, b) => a.join() === b.join(),
  });
  const names = createMemo((): [string, string] => {
    const [a = '', b = ''] = plans().map((plan) => props.store.shape().plans[plan]?.name ?? '');
    return [a, b];
  });
  const nameOf = createMemo(() => namesAmong(props.store.shape().cells));
  const beside = createMemo((): PlanPair => ({
    model: props.store.model(),
    values: props.store.values(),
    plans: plans(),
    nameOf: nameOf(),
    format: localFormat,
  }));
  const asks = createMemo(() => demandsOf(beside()));
  const asked = createMemo(() => (props.made.unknown.length === 0 ? withNetChange(props.store.model()) : undefined));
  let made: HTMLDivElement | undefined;
  const inSight = createSight(() => made);
  const studies = createStudies(
    props,
    () => asked(),
    () => asked() !== undefined && inSight(),
  );
  const years = createYearsSettings(props, () => props.plan);
  const invented = createMemo(() => inventedNotice(props.store.model(), plans()));
  const failing = createMemo(() => failingIn(props, plans()));
  return (
    <div class="case-made" ref={made}>
      <AtTheTop {...props} studies={asked() && studies} nameOf={nameOf()} plans={plans()} />
      <Warnings failing={failing()} goTo={props.goTo} />
      <AnswerAndBudget
        {...props}
        nameOf={nameOf()}
        names={names()}
        words={<OwnWordsView words={ownWords(props.choice, () => props.store.shape().title)} />}
      />
      <div class="studied">
        <Studied
          {...props}
          names={names()}
          beside={beside()}
          asks={asks()}
          studies={asked() === undefined ? undefined : studies}
          years={years}
        />
      </div>
      <Limits invented={invented()} topics={topicsOf(props, asks())}>
        <HiddenMoneyList {...props} against={props.from} settled={settled} open isShown />
      </Limits>
      <Show when={!isSent}>
        <SaveLive {...props} />
      </Show>
    </div>
  );
}

interface AtTheTopProps extends CaseMadeProps {
  /** Undefined where there is no net change to study. */
  readonly studies: Studies | undefined;
  readonly nameOf: (cell: Cell) => string;
  readonly plans: readonly [number, number];
}

/** The verdict, and in a model of more plans what the others come to. */
function AtTheTop(props: AtTheTopProps): JSX.Element {
  return (
    <>
      <Show when={props.studies}>{(studies) => <Verdict {...props} studies={studies()} />}</Show>
      <Show when={hasFurther(props.store.shape().plans.length, props.plans)}>
        <OtherPlans {...props} />
      </Show>
    </>
  );
}

/** The checks that do not hold in the plans of a case. */
function failingIn({ store }: CaseMadeProps, plans: readonly number[]): Failing[] {
  const values = store.values();
  return failingChecks(store.shape().cells, plans, (plan, { id }) => values[plan]?.numbers[id]);
}

/** The topics of the cautions; that the case is no financial advice is always one. */
function topicsOf({ store }: CaseMadeProps, asks: readonly PlanDemand[]): CautionTopic[] {
  const isHandWork = asks.some(({ kind }) => kind === 'seconds');
  const others = cautionTopics(store.shape().cells).filter((topic) => topic !== 'money');
  return isHandWork ? ['hands', ...others] : others;
}

interface StudiedProps extends CaseMadeProps {
  readonly names: readonly [string, string];
  readonly beside: PlanPair;
  readonly asks: readonly PlanDemand[];
  /** Undefined where there is no net change to study. */
  readonly studies: Studies | undefined;
  readonly years: YearsSettings;
}

/** What the answer depends on, what it needs of people and space, and what is assumed. */
function Studied(props: StudiedProps): JSX.Element {
  return (
    <>
      <Show when={props.studies}>
        {(studies) => (
          <section class="part" aria-labelledby="case-hangs-on">
            <h3 id="case-hangs-on">{caseTexts.hangsOn}</h3>
            <HangsOn {...props} nameOf={props.beside.nameOf} studies={studies()} />
          </section>
        )}
      </Show>
      <YearsSection {...props} settings={props.years} />
      <Show when={props.asks.length > 0}>
        <section class="part rests-on" aria-labelledby="case-asks">
          <h3 id="case-asks">{caseTexts.asks}</h3>
          <div class="in-columns">
            <ComparedTable caption={caseTexts.asksTable} groups={props.asks} plans={props.names} goTo={props.goTo} />
          </div>
        </section>
      </Show>
      <Show when={props.studies}>
        {(studies) => (
          <section class="part" aria-labelledby="case-assumed">
            <h3 id="case-assumed">{caseTexts.assumed}</h3>
            <AssumedPart {...props} studies={studies()} />
          </section>
        )}
      </Show>
    </>
  );
}
