import { createMemo, createSignal, Show, type JSX } from 'solid-js';
import { Portal } from 'solid-js/web';
import { printOnly } from '../printOnly';
import { useWork } from '../work';
import { lessonOf } from './lesson';
import { LessonSheet, type SheetKind } from './LessonSheet';

/** Offers the two sheets of a model that is a lesson; a sheet is on the page only while it is printed. */
export function LessonPrint(): JSX.Element {
  const { live } = useWork();
  const lesson = createMemo(() => lessonOf(live.shape()));
  const [sheet, setSheet] = createSignal<SheetKind>();
  const print = (kind: SheetKind): void => {
    setSheet(kind);
    printOnly('lesson', () => setSheet(undefined));
  };
  return (
    <Show when={lesson()}>
      {(found) => (
        <p class="lesson-print">
          <button type="button" class="word" onClick={() => print('questions')}>
            Print the sheet without answers
          </button>
          <button type="button" class="word" onClick={() => print('answers')}>
            Print the answer sheet
          </button>
          <Show when={sheet()}>
            {(kind) => (
              <Portal>
                <LessonSheet kind={kind()} lesson={found()} model={live.model()} values={live.values()} />
              </Portal>
            )}
          </Show>
        </p>
      )}
    </Show>
  );
}
