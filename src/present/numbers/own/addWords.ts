import { wording } from '../../../language/wording';

/** Words that open what adds to a model or changes all of it. */
export const addTexts = {
  line: wording`Add a cost or return`,
  entry: wording`Add an entry`,
  steps: wording`Price by quantity`,
  whole: wording`Currency and units`,
  entryUnder: (heading: string) => wording`Add an entry under ${heading}`,
} as const;
