import { wording } from '../../language/wording';

/** Where a picture comes from: the model, the day, and the program. @param day as it is written */
export function sourceLine(title: string, day: string): string {
  return [title, day, wording`Raftmargin`].filter(Boolean).join(' · ');
}
