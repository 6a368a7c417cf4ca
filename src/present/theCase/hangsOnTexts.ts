import { wording } from '../../language/wording';
import { link, sayLinked } from '../text/linkedPhrase';

/** Words round what a case hangs on. */
export const hangsOnTexts = {
  looking: wording`Looking for where the answer turns …`,
  searchEnded: wording`The search for where the answer turns ended early. Change any number to start it again.`,
  more: sayLinked`${link(wording`How sure`)} tells more.`,
  caption: wording`Where it turns first, each entry by itself`,
  turnsAt: wording`turns at`,
  unit: wording`unit`,
  rangeFrom: wording`range from`,
  rangeTo: wording`range to`,
} as const;
