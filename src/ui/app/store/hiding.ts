import { createMemo } from 'solid-js';
import { hidden } from '../../../present/numbers/shownValue';
import type { Values } from '../../../model/values';
import { unknownNumber } from './cellSignals';
import type { LessonState } from './lessonState';
import type { ModelStore } from './modelStore';

function withoutHidden(values: Values, plan: number, { isHidden }: LessonState): Values {
  return {
    numbers: values.numbers.map((number, cell) => (isHidden(plan, cell) ? unknownNumber : number)),
    errors: values.errors,
  };
}

/** The store as the page shows it: a hidden result has no number, wherever it is asked for. */
export function createHiding(store: ModelStore, lesson: LessonState): ModelStore {
  const { isHiding, isHidden } = lesson;
  const values = createMemo(() =>
    isHiding() ? store.values().map((each, plan) => withoutHidden(each, plan, lesson)) : store.values(),
  );
  return {
    ...store,
    values,
    valuesBefore: () => (isHiding() ? undefined : store.valuesBefore()),
    shown: (plan, cell) => {
      const shown = store.shown(plan, cell);
      return isHidden(plan, cell) ? { ...shown, number: unknownNumber, error: hidden(cell) } : shown;
    },
    before: (plan, cell) => (isHidden(plan, cell) ? unknownNumber : store.before(plan, cell)),
  };
}
