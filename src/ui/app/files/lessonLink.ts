import { createEffect, on } from 'solid-js';
import type { Problem } from '../../../core/problem';
import type { SharedFile } from '../../../files/sharedFile';
import type { PageState } from '../pageContext';
import { classStepSetting } from '../preferences/settings/lesson';
import { questionSetting } from '../preferences/settings/page';
import { listenForLinks } from './modelLink';

/** Opens models of links; a lesson is shown to a class at the step that its link names. */
export function listenForLessonLinks(
  { store, lesson, choice }: PageState,
  open: (found: SharedFile | { readonly problem: Problem }) => void,
): void {
  let asked: { readonly name: string; readonly step: number } | undefined;
  const teach = (): void => {
    const [wanted, title] = [asked, lesson.lesson()?.title];
    asked = undefined;
    if (wanted === undefined || title === undefined || store.origin().name !== wanted.name) return;
    choice.set(classStepSetting(title), Math.max(0, wanted.step - 1));
    choice.set(questionSetting, 'teach');
  };
  // What is opened leaves the page that stood alone first.
  createEffect(on(store.origin, () => requestAnimationFrame(teach), { defer: true }));
  listenForLinks((found, step) => {
    asked = 'name' in found && step !== undefined ? { name: found.name, step } : undefined;
    open(found);
  });
}
