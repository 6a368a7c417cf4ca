import { createMemo, Show, type JSX } from 'solid-js';
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
  const one = createMemo(() => onePlanOf(props.store.model(), props.store.values(), props.index));
  const name = (): string => props.names[props.index] ?? '';
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
        {(known) => <Found {...props} one={known()} name={name()} />}
      </Show>
      <MethodLink choice={props.choice} entry="enterprise budget" />
    </>
  );
}

function Found(props: OnePlanProps & { one: OnePlan; name: string }): JSX.Element {
  const nameOf = createMemo(() => namesAmong(props.store.shape().cells));
  const finding = createMemo((): Phrase => onePlanFinding(props.one, props.name, localFormat));
  return (
    <>
      <LiveText>
        <p>
          <Sentence phrase={finding()} />
        </p>
      </LiveText>
      <CostBars one={props.one} nameOf={nameOf()} finding={finding()} />
      <OnePlanTable one={props.one} nameOf={nameOf()} goTo={props.goTo} />
      <Show when={props.one.forPlants}>
        <YieldTable one={props.one} />
      </Show>
    </>
  );
}
