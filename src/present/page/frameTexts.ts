import { wording } from '../../language/wording';
import { commonTexts } from '../text/commonTexts';

/** What the page says around its screens: its name, what leads from one part to another, and that it is at work. */
export const frameTexts = {
  program: wording`Raftmargin`,
  /** Also written in index.html, where it stands before any script is there. */
  about: wording`What a plant costs, what the beds can carry, and where the answer flips, for growers of leafy greens on floating rafts.`,
  windowTitle: (model: string) => (model === '' ? wording`Raftmargin` : wording`${model} – Raftmargin`),
  toNumbers: wording`To the numbers`,
  toQuestions: wording`To the questions`,
  questions: wording`Questions`,
  howWorked: wording`How everything is worked out`,
  backTo: commonTexts.backTo,
  backWhereYouWere: wording`Back to where you were`,
  opening: wording`Opening …`,
  drawing: wording`Drawing …`,
  notShown: (reason: string) => wording`This question could not be shown: ${reason}`,
  untouched: wording`Your numbers are untouched.`,
  loadAgain: wording`Load the page again`,
} as const;
