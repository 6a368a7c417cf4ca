import type { JSX } from 'solid-js';
import { lessonTexts } from '../../present/lesson/texts';
import { usePage } from '../app/pageContext';
import { resultsHiddenSetting } from '../app/preferences/settings/lesson';
import { Link } from '../kit/Link';

/** Stands in the place of a question whose results a class is to guess first. */
export function NotYet(): JSX.Element {
  const { choice } = usePage();
  return (
    <div class="empty">
      <p>{lessonTexts.notYet}</p>
      <Link onPress={() => choice.set(resultsHiddenSetting, false)}>{lessonTexts.showResults}</Link>
    </div>
  );
}
