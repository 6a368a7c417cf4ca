import { screenQuestions } from '../page/questions';
import { commonTexts } from '../text/commonTexts';

/**
 * What leads back from the page to where it was opened.
 * @param from key of the question that was in sight then; what is none leads to the numbers
 */
export function backText(from: string): string {
  const question = screenQuestions.find(({ key }) => key === from) ?? screenQuestions[0];
  return commonTexts.backTo(question.label);
}
