import { iCalendar } from '../../../../trade/iCalendar';
import type { CropNames } from '../../../../present/beds/stageNames';
import type { WorkTask } from '../../../../trade/workList';
import { download } from '../../../app/files/saving';
import { stampOf } from '../../../../present/text/dates';
import { workEvents } from '../../../../present/beds/work/workFiles';
import { fileName, uidOf } from '../../../../present/beds/work/week';

/** What the work belongs to: the names of the file, the plan and the crop's things. */
export interface WorkOf {
  readonly file: string;
  readonly plan: string;
  readonly names: CropNames;
}

/** Saves a week's work as a calendar file, through the browser; nothing where there is no work. */
export function saveCalendarFile(list: readonly WorkTask[], from: number, { file, plan, names }: WorkOf): void {
  const events = workEvents(list, (task) => uidOf(task, file, plan), names);
  const text = iCalendar(events, stampOf(new Date()));
  if (text !== undefined) download(fileName(from, 'ics'), text, 'text/calendar');
}
