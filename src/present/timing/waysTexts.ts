import { wording } from '../../language/wording';

/** Fixed texts of the comparison of two ways of working. */
export const waysTexts = {
  heading: wording`Two ways of working`,
  howTo: (step: string) =>
    wording`Name the way of each batch of ${step} in its field “way”, such as “at the bed” and “workbench”: with two names the two are compared here.`,
  way: wording`Way`,
  one: wording`One way`,
  other: wording`The other way`,
  table: wording`Both ways`,
  caution: wording`Time both ways with the same people, plants and hours, and by turns: else it is these that are compared. Ratings count.`,
  method: wording`How two ways are compared`,
} as const;
