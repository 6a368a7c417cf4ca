import { wording, wordingOf } from '../../../language/wording';
import { wholeWeeks } from '../../../trade/week';

/** Words round a week's work. */
export const weekTexts = {
  heading: wording`Next week’s work`,
  from: wording`Week from`,
  print: wording`Print the week`,
  saveCalendar: wording`Save as a calendar file`,
  /** @param start the first day of the year, written out */
  outside: (start: string) => wording`That week does not lie in the ${wholeWeeks} weeks that begin on ${start}.`,
  table: wording`Table of the week’s work`,
  day: wording`day`,
  what: wording`what`,
  date: wording`date`,
  task: wording`task`,
  fromStage: wordingOf('a stage')`from`,
  toStage: wordingOf('a stage')`to`,
  /** Of plants and boards, in a column of their own. */
  tasks: {
    sow: wordingOf('a task')`sow`,
    move: wordingOf('a task')`move`,
    harvest: wordingOf('a task')`harvest`,
    wash: wordingOf('a task')`wash`,
  },
  hours: wording`hours`,
  allHours: wording`all hours`,
} as const;
