import { createMemo, createSignal, lazy, Show, type JSX } from 'solid-js';
import { Portal } from 'solid-js/web';
import { printOnly } from '../../../app/layout/printOnly';
import { usePage } from '../../../app/pageContext';
import { lessonOf } from '../../../../present/lesson/steps';
import { lessonTexts } from '../../../../present/lesson/texts';
import type { SheetKind } from './LessonSheet';

const LessonSheet = lazy(async () => ({ default: (await import('./LessonSheet')).LessonSheet }));

/** Buttons that print the two sheets of a lesson; a sheet is on the page only while it is printed. */
export function LessonPrint(): JSX.Element {
  const { store } = usePage();
  const lesson = createMemo(() => lessonOf(store.shape()));
  const [sheet, setSheet] = createSignal<SheetKind>();
  const print = (kind: SheetKind): void => {
    void LessonSheet.preload().then(() => {
      setSheet(kind);
      printOnly('lesson', () => setSheet(undefined));
    });
  };
  return (
    <Show when={lesson()}>
      {(found) => (
        <p class="lesson-print">
          <button type="button" class="word" onClick={() => print('questions')}>
            {lessonTexts.printQuestions}
          </button>
          <button type="button" class="word" onClick={() => print('answers')}>
            {lessonTexts.printAnswers}
          </button>
          <Show when={sheet()}>
            {(kind) => (
              <Portal>
                <LessonSheet kind={kind()} lesson={found()} model={store.model()} values={store.values()} />
              </Portal>
            )}
          </Show>
        </p>
      )}
    </Show>
  );
}
