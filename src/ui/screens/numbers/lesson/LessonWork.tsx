import { createSignal, lazy, Show, type JSX } from 'solid-js';
import { Portal } from 'solid-js/web';
import { printOnly } from '../../../app/layout/printOnly';
import { usePage } from '../../../app/pageContext';
import { resultsHiddenSetting } from '../../../app/preferences/settings/lesson';
import { questionSetting } from '../../../app/preferences/settings/page';
import { lessonTexts } from '../../../../present/lesson/texts';
import type { SheetKind } from './LessonSheet';

const LessonSheet = lazy(async () => ({ default: (await import('./LessonSheet')).LessonSheet }));

/** What a lesson can be used for: taught, kept secret, printed. A sheet is on the page only while it is printed. */
export function LessonWork(): JSX.Element {
  const { store, lesson, choice } = usePage();
  const [sheet, setSheet] = createSignal<SheetKind>();
  const print = (kind: SheetKind): void => {
    void LessonSheet.preload().then(() => {
      setSheet(kind);
      printOnly('lesson', () => setSheet(undefined));
    });
  };
  return (
    <Show when={lesson.lesson()}>
      {(found) => (
        <p class="lesson-print">
          <button type="button" class="word" onClick={() => choice.set(questionSetting, 'teach')}>
            {lessonTexts.teach}
          </button>
          <button
            type="button"
            class="word"
            onClick={() => choice.set(resultsHiddenSetting, !choice.get(resultsHiddenSetting))}>
            {choice.get(resultsHiddenSetting) ? lessonTexts.showResults : lessonTexts.hideResults}
          </button>
          <button type="button" class="word" onClick={() => print('questions')}>
            {lessonTexts.printQuestions}
          </button>
          <button type="button" class="word" onClick={() => print('answers')}>
            {lessonTexts.printAnswers}
          </button>
          <Show when={sheet()}>
            {(kind) => (
              <Portal>
                <LessonSheet kind={kind()} lesson={found()} model={store.model()} values={lesson.values()} />
              </Portal>
            )}
          </Show>
        </p>
      )}
    </Show>
  );
}
