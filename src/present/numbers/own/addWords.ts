/** Words that open what adds to a model or changes all of it. */
export const addTexts = {
  line: 'Add a cost or return',
  entry: 'Add an entry',
  steps: 'Price by quantity',
  whole: 'Currency and units',
  entryUnder: (heading: string) => `Add an entry under ${heading}`,
} as const;
