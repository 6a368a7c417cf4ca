import { batch, createMemo, Show, type JSX } from 'solid-js';
import { byRule, type CountedByHand } from '../../../../trade/enterpriseBudget';
import { byHandSentence, countedOtherwise } from '../../../../present/plans/onePlan/byHand';
import { countedSetting } from '../../../app/preferences/settings/plans';
import { onePlanOf, type OnePlan } from '../../../../present/plans/onePlan/onePlan';
import { onePlanFinding } from '../../../../present/plans/onePlan/sentences';
import { onePlanTexts } from '../../../../present/plans/onePlan/texts';
import { namesAmong } from '../../../../present/text/entryNames';
import type { Phrase } from '../../../../present/text/phrase';
import { localFormat } from '../../../app/preferences/localFormat';
import type { ScreenProps } from '../../../app/screenProps';
import { MethodLink } from '../../../kit/method/MethodLink';
import { LiveText } from '../../../kit/sections/LiveText';
import { Sentence } from '../../../kit/sections/Sentence';
import { PlanChooser } from '../PlanChooser';
import { CostBars } from './CostBars';
import { OnePlanTable } from './OnePlanTable';
import { YieldTable } from './YieldTable';
import './onePlan.css';

interface OnePlanProps extends ScreenProps {
  /** Of the plans. */
  readonly names: readonly string[];
  /** Index of the plan whose budget it is. */
  readonly index: number;
  readonly choosePlan: (name: string) => void;
}

/** The enterprise budget of one plan: what it leaves, what it needs, its costs by kind and its lines. */
export function OnePlanPart(props: OnePlanProps): JSX.Element {
  const counting = createCounting(props);
  const one = createMemo(() => onePlanOf(props.store.model(), props.store.values(), props.index, counting.byHand()));
  /** A plan that stands alone has no name of its own. */
  const name = (): string => (props.names.length > 1 ? (props.names[props.index] ?? '') : onePlanTexts.onlyPlan);
  return (
    <>
      <Show when={props.names.length > 1}>
        <div class="asking">
          <PlanChooser
            label={onePlanTexts.plan}
            letter=""
            names={props.names}
            chosen={name()}
            choose={props.choosePlan}
          />
        </div>
      </Show>
      <Show when={one()} fallback={<p class="quiet">{onePlanTexts.noLines}</p>}>
        {(known) => <Found {...props} one={known()} name={name()} counting={counting} />}
      </Show>
      <MethodLink choice={props.choice} entry="enterprise budget" />
    </>
  );
}

/** How a person counts lines, kept among the choices for each model by its title. */
interface Counting {
  readonly byHand: () => CountedByHand;
  readonly set: (byHand: CountedByHand) => void;
}

function createCounting(props: Pick<OnePlanProps, 'store' | 'choice'>): Counting {
  const title = (): string => props.store.shape().title;
  return {
    byHand: () => ({
      rising: props.choice.get(countedSetting('rising', title())),
      staying: props.choice.get(countedSetting('staying', title())),
    }),
    set: ({ rising, staying }) =>
      batch(() => {
        props.choice.set(countedSetting('rising', title()), rising);
        props.choice.set(countedSetting('staying', title()), staying);
      }),
  };
}

function Found(props: OnePlanProps & { one: OnePlan; name: string; counting: Counting }): JSX.Element {
  const nameOf = createMemo(() => namesAmong(props.store.shape().cells));
  const finding = createMemo((): Phrase => onePlanFinding(props.one, props.name, localFormat));
  const byHand = createMemo(() => byHandSentence(props.one, nameOf()));
  return (
    <>
      <LiveText>
        <p>
          <Sentence phrase={finding()} />
        </p>
      </LiveText>
      <Show when={byHand()}>
        {(said) => (
          <p class="message">
            <Sentence phrase={said()} />{' '}
            <button type="button" class="link" onClick={() => props.counting.set(byRule)}>
              {onePlanTexts.allByRule}
            </button>
          </p>
        )}
      </Show>
      <CostBars one={props.one} nameOf={nameOf()} finding={finding()} />
      <OnePlanTable
        one={props.one}
        nameOf={nameOf()}
        goTo={props.goTo}
        turn={(name, now) => props.counting.set(countedOtherwise(props.counting.byHand(), name, now))}
      />
      <Show when={props.one.forPlants}>
        <YieldTable one={props.one} />
      </Show>
    </>
  );
}
