import { createMemo, For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import type { ModelStore } from '../../app/store/modelStore';
import type { ResultLine, MovableResult } from '../../../present/results/resultLines';
import { usualQuestions, type UsualQuestion } from '../../../present/breakeven/usualQuestions';
import { breakevenTexts } from '../../../present/breakeven/texts';

interface UsualQuestionsProps {
  readonly store: ModelStore;
  readonly plan: number;
  readonly prepared: MovableResult | undefined;
  /** The input of the current question. */
  readonly input: Cell;
  readonly ask: (input: Cell) => void;
}

/** Whether a line changes when the input is half as much or one and a half times as much. */
function isMoved(line: ResultLine | undefined, today: number): boolean {
  if (line?.depends !== true) return false;
  const base = line.base.toNumber();
  return [0.5, 1.5].some((share) => Math.abs(line.float(today * share) - base) > 1e-9 * Math.abs(base));
}

/** How much an input matters: it changes the plan's own result, only the difference, or neither. */
function bearing(prepared: MovableResult | undefined, { id }: Cell): number {
  const lines = prepared?.lines(id);
  const today = lines?.lever.base.toNumber() ?? NaN;
  if (!isMoved(lines?.difference ?? lines?.plan, today)) return 0;
  return isMoved(lines?.plan, today) ? 2 : 1;
}

function same(a: readonly UsualQuestion[], b: readonly UsualQuestion[]): boolean {
  return a.length === b.length && a.every(({ text, input }, i) => text === b[i]?.text && input === b[i].input);
}

/** Buttons for the usual questions that this model can answer. */
export function UsualQuestions(props: UsualQuestionsProps): JSX.Element {
  const subject = createMemo(
    (): readonly UsualQuestion[] => {
      const model = props.store.model();
      const plan = model.plans[props.plan];
      const prepared = props.prepared;
      return plan === undefined ? [] : usualQuestions(model, plan, (input) => bearing(prepared, input));
    },
    [],
    { equals: same },
  );
  return (
    <Show when={subject().length > 0}>
      <ul class="usual-questions" aria-label={breakevenTexts.usualQuestions}>
        <For each={subject()}>
          {({ text, input }) => (
            <li>
              <button
                type="button"
                aria-pressed={input.id === props.input.id}
                title={input.label}
                onClick={() => props.ask(input)}>
                {text}
              </button>
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}
