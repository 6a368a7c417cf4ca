import { wording } from '../../../language/wording';
import type { Decimal } from '../../../core/number';
import { plainly, say, sentences, type Phrase } from '../../text/phrase';
import type { Format } from '../../text/numberFormat';
import { counted, whole } from '../../text/quantities';
import type { ScheduleView } from './schedules';
import { boardsFirstMet, boardsIn } from '../names';

/** What the beds finish, and what else is worth knowing. */
export interface StageSentences {
  readonly main: Phrase;
  readonly more: Phrase;
}

function against(flow: Decimal, balanced: Decimal, format: Format): Phrase {
  const less = balanced.minus(flow);
  const number = whole(less.abs(), format);
  if (number === '0') return plainly(wording`as many as balanced flow`);
  return less.gt(0) ? say`${number} fewer than balanced flow` : say`${number} more than balanced flow`;
}

function boardsSentence({ planSchedule: { schedule, names }, whole: onBoards }: ScheduleView, format: Format): Phrase {
  const free = whole(schedule.boards.minus(onBoards.boardsUsed), format);
  const all = counted(schedule.boards, names.board, format);
  const used = whole(onBoards.boardsUsed, format);
  if (free === '0') return say`All of the ${all} are in use on the fullest day.`;
  if (free === '1') return say`Of ${all} ${used} are in use on the fullest day; ${free} stays free.`;
  return say`Of ${all} ${used} are in use on the fullest day; ${free} stay free.`;
}

function emptySentence({ planSchedule: { schedule, names }, byHand }: ScheduleView, format: Format): Phrase {
  const empty = schedule.stages.flatMap(({ number }, i) => {
    const boards = byHand?.emptyBoards[i];
    return boards?.gt(0) === true && whole(boards, format) !== '0' ? [{ number, boards }] : [];
  });
  return sentences(
    ...empty.map(({ number, boards }) => {
      const [stage, idle] = [boardsIn(names, [number]), whole(boards, format)];
      return idle === '1' ? say`Of the ${stage} ${idle} stands empty.` : say`Of the ${stage} ${idle} stand empty.`;
    }),
  );
}

/** Which stage finishes fewest, where boards are set by hand. */
function bottleneckSentence(view: ScheduleView, format: Format): Phrase {
  const {
    byHand,
    balanced,
    planSchedule: { names },
  } = view;
  if (byHand === undefined || byHand.finishedPerWeek.isNaN()) return [];
  const flow = counted(byHand.finishedPerWeek, names.plant, format);
  const which = say`The ${boardsFirstMet(names, byHand.bottleneck)} are the bottleneck as set by hand: ${flow} a week.`;
  const better = say`A balanced split would give ${whole(balanced.finishedPerWeek, format)}.`;
  return sentences(which, emptySentence(view, format), better);
}

/** @param plan blank where the model has no other */
export function stageSentences(view: ScheduleView, plan: string, format: Format): StageSentences {
  const {
    balanced,
    whole: onBoards,
    planSchedule: { names },
  } = view;
  const who = plan === '' ? [] : say`${plan}: `;
  if (onBoards.finishedPerWeek.isNaN()) {
    return {
      main: say`${who}what the beds finish on whole ${plainly(names.board.many)} cannot be computed until a fault is mended.`,
      more: [],
    };
  }
  if (onBoards.batch.isZero()) {
    return {
      main: say`${who}no batch fits on the ${plainly(names.board.many)} there are, so nothing finishes.`,
      more: [],
    };
  }
  const flow = counted(onBoards.finishedPerWeek, names.plant, format);
  const compared = against(onBoards.finishedPerWeek, balanced.finishedPerWeek, format);
  return {
    main: say`${who}${flow} a week finish on whole ${plainly(names.board.many)}, ${compared}.`,
    more: sentences(boardsSentence(view, format), bottleneckSentence(view, format)),
  };
}
