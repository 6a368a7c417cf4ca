import { link, sayLinked } from '../text/linkedPhrase';

/** Words round what a case hangs on. */
export const hangsOnTexts = {
  looking: 'Looking for where the answer turns …',
  searchEnded: 'The search for where the answer turns ended early. Change any number to start it again.',
  more: sayLinked`${link('How sure')} tells more.`,
  caption: 'Where it turns first, each entry by itself',
  turnsAt: 'turns at',
  unit: 'unit',
  rangeFrom: 'range from',
  rangeTo: 'range to',
} as const;
