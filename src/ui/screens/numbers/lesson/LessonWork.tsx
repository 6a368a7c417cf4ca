import { createSignal, lazy, Show, type JSX } from 'solid-js';
import { Portal } from 'solid-js/web';
import { PrintWord } from '../../../kit/paper/PrintWord';
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
  const show = async (kind: SheetKind): Promise<void> => {
    await LessonSheet.preload();
    setSheet(kind);
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
          <PrintWord part="lesson" before={() => show('questions')} after={() => setSheet(undefined)}>
            {lessonTexts.printQuestions}
          </PrintWord>
          <PrintWord part="lesson" before={() => show('answers')} after={() => setSheet(undefined)}>
            {lessonTexts.printAnswers}
          </PrintWord>
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
