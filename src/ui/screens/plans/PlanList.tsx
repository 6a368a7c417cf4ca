import { createMemo, Index, Show, untrack, type JSX } from 'solid-js';
import { differingCells, differsBy } from '../../../present/plans/differing';
import { isUnnamed } from '../../../present/plans/form';
import { plansTexts } from '../../../present/plans/texts';
import { lettersOf } from '../../../present/text/planLetter';
import { usePage } from '../../app/pageContext';
import { PlanLetter } from '../../kit/PlanLetter';
import { DoneLine } from './DoneLine';
import { NameForm } from './NameForm';
import type { PlanChanges } from './planChanges';

/** The plans in their order, each with what can be done with it. */
export function PlanList(props: { changes: PlanChanges }): JSX.Element {
  const { store, settled } = usePage();
  const names = createMemo(() => store.shape().plans.map(({ name }) => name));
  const differing = createMemo(() => {
    store.shape();
    settled();
    const model = untrack(store.model);
    return model.plans.map((_plan, p) => differingCells(model, p, 0).length);
  });
  let list!: HTMLOListElement;
  /** A button of a plan takes the focus once the list shows what became of it; of a plan that is gone, its way back. */
  const focus = (plan: string, does: string): void => {
    const row = list.children[names().indexOf(plan)];
    const button = row?.querySelector<HTMLElement>(`[data-does="${does}"]`);
    (button ?? list.parentElement?.querySelector<HTMLElement>('.plans-done button'))?.focus();
  };
  return (
    <section class="part" aria-labelledby="plans-list">
      <h3 id="plans-list">{plansTexts.list}</h3>
      <Show when={names().length > 1}>
        <p class="quiet">{plansTexts.listExplained}</p>
      </Show>
      <ol class="plan-list" ref={list}>
        <Index each={names()}>
          {(name, place) => (
            <PlanRow
              name={name()}
              place={place}
              count={names().length}
              differing={differing()[place] ?? 0}
              changes={props.changes}
              focus={focus}
            />
          )}
        </Index>
      </ol>
      <DoneLine changes={props.changes} about="plans" />
    </section>
  );
}

interface PlanRowProps {
  readonly name: string;
  /** From 0. */
  readonly place: number;
  readonly count: number;
  /** Entries that it is given otherwise than the reference. */
  readonly differing: number;
  readonly changes: PlanChanges;
  readonly focus: (plan: string, does: string) => void;
}

function PlanRow(props: PlanRowProps): JSX.Element {
  const { store, compared } = usePage();
  const form = createMemo(() => (props.changes.form()?.plan === props.name ? props.changes.form() : undefined));
  const letter = (): string => lettersOf(props.count, compared.columns())[props.place] ?? '';
  const said = (): string => (props.place === 0 ? plansTexts.reference : differsBy(props.differing));
  return (
    <li class="plan-row">
      <p class="plan-title">
        <PlanLetter letter={letter()} />
        <bdi class="plan-name">{isUnnamed(store.shape().sheet) ? plansTexts.unnamed : props.name}</bdi>{' '}
        <Show when={props.count > 1}>
          <span class="quiet">{said()}</span>
        </Show>
      </p>
      <PlanButtons {...props} />
      <Show when={form() !== undefined && form()?.does} keyed>
        {(does) => (
          <NameForm
            form={form() ?? { does, plan: props.name, name: '', first: '' }}
            changes={props.changes}
            leave={() => props.focus(props.name, does)}
            done={(plan) => props.focus(plan, does)}
          />
        )}
      </Show>
    </li>
  );
}

/** Buttons that cannot do anything keep the focus: switched off they would let it fall. */
function PlanButtons(props: PlanRowProps): JSX.Element {
  const move = (by: -1 | 1, does: string): void => {
    const moved = props.name;
    if (props.changes.move(moved, by)) props.focus(moved, does);
  };
  const remove = (): void => {
    const removed = props.name;
    props.changes.remove(removed);
    props.focus(removed, 'remove');
  };
  return (
    <p class="plan-buttons">
      <PlanButton {...props} does="copy" word={plansTexts.copy} press={() => props.changes.open('copy', props.name)} />
      <PlanButton
        {...props}
        does="rename"
        word={plansTexts.rename}
        press={() => props.changes.open('rename', props.name)}
      />
      <Show when={props.count > 1}>
        <PlanButton
          {...props}
          does="earlier"
          word={plansTexts.earlier}
          off={props.place === 0}
          press={() => move(-1, 'earlier')}
        />
        <PlanButton
          {...props}
          does="later"
          word={plansTexts.later}
          off={props.place === props.count - 1}
          press={() => move(1, 'later')}
        />
        <PlanButton {...props} does="remove" word={plansTexts.remove} press={remove} />
      </Show>
    </p>
  );
}

interface PlanButtonProps extends PlanRowProps {
  readonly does: string;
  readonly word: string;
  readonly off?: boolean;
  readonly press: () => void;
}

function PlanButton(props: PlanButtonProps): JSX.Element {
  return (
    <button
      type="button"
      class="word"
      data-does={props.does}
      aria-disabled={props.off === true ? 'true' : undefined}
      onClick={() => {
        if (props.off !== true) props.press();
      }}>
      {props.word}
      <span class="heard">{plansTexts.forPlan(props.name)}</span>
    </button>
  );
}
