import { screenQuestions } from '../page/questions';
import { togetherHeading } from '../together/heading';
import { commonTexts } from '../text/commonTexts';

/**
 * The text of the link that leads back from the page on methods.
 * @param from key of the question from which the page was opened; any other text leads back to the numbers
 */
export function backText(from: string): string {
  if (from === 'together') return commonTexts.backTo(togetherHeading);
  const question = screenQuestions.find(({ key }) => key === from) ?? screenQuestions[0];
  return commonTexts.backTo(question.label);
}
