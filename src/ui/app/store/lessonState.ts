import { createEffect, createMemo, createSignal, untrack, type Accessor } from 'solid-js';
import type { Model } from '../../../model/model';
import type { Values } from '../../../model/values';
import { hiddenKey } from '../../../present/lesson/hiddenKey';
import { lessonOf, type Lesson } from '../../../present/lesson/steps';
import { openedStepsSetting, resultsHiddenSetting } from '../preferences/settings/lesson';
import type { Choice } from '../screenProps';
import type { ModelStore } from './modelStore';

/** What a class has been told of the model that is open, where it is a lesson. */
export interface LessonState {
  readonly lesson: Accessor<Lesson | undefined>;
  /** Whether some results are hidden now. */
  readonly isHiding: Accessor<boolean>;
  /** Whether a result is hidden in a plan. */
  readonly isHidden: (plan: number, cell: number) => boolean;
  /** Changes with what is hidden. */
  readonly hidden: Accessor<unknown>;
  readonly isOpened: (step: number) => boolean;
  readonly setOpened: (step: number, opened: boolean) => void;
  /** All values, of hidden results too: the answers of opened steps are made from them. */
  readonly values: Accessor<readonly Values[]>;
}

type HiddenResults = (model: Model, lesson: Lesson, opened: ReadonlySet<number>) => ReadonlySet<string>;

/** What is hidden is worked out by a part that loads with the first lesson that hides something. */
function createHiddenResults(wanted: Accessor<boolean>): Accessor<HiddenResults | undefined> {
  const [found, setFound] = createSignal<HiddenResults>();
  createEffect(() => {
    if (!wanted() || untrack(found) !== undefined) return;
    void import('../../../present/lesson/hiddenResults').then(({ hiddenResults }) => setFound(() => hiddenResults));
  });
  return found;
}

export function createLessonState(store: ModelStore, choice: Choice): LessonState {
  const lesson = createMemo(() => lessonOf(store.shape()));
  const title = (): string => lesson()?.title ?? '';
  const opened = createMemo(() => new Set(choice.get(openedStepsSetting(title()))));
  const wantsHidden = createMemo(() => lesson() !== undefined && choice.get(resultsHiddenSetting));
  const work = createHiddenResults(() => wantsHidden());
  const hidden = createMemo<ReadonlySet<string> | undefined>(() => {
    const found = lesson();
    return wantsHidden() && found !== undefined ? work()?.(store.shape(), found, opened()) : undefined;
  });
  const isHiding = createMemo(() => wantsHidden() && hidden()?.size !== 0);
  return {
    lesson,
    isHiding,
    isHidden: (plan, cell) => {
      if (!wantsHidden()) return false;
      // Until it is known what may be seen, no result is.
      return hidden()?.has(hiddenKey(plan, cell)) ?? store.shape().plans[plan]?.contents[cell]?.kind === 'calculated';
    },
    hidden,
    isOpened: (step) => opened().has(step),
    setOpened: (step, isOpen) => {
      if (opened().has(step) === isOpen) return;
      const others = [...opened()].filter((one) => one !== step);
      choice.set(openedStepsSetting(title()), isOpen ? [...others, step] : others);
    },
    values: store.values,
  };
}
