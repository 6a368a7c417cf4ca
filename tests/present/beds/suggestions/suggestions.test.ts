import { describe, expect, it } from 'vitest';
import { decimal } from '../../../../src/core/number';
import { changed, suggestions, type Change, type Suggestion } from '../../../../src/trade/suggestions';
import { wholeBoards } from '../../../../src/trade/schedule';
import { plainly } from '../../../../src/present/text/phrase';
import { fewSuggestions, partOf, suggestionSentence } from '../../../../src/present/beds/suggestions/suggestions';
import { askedOn, english, read } from '../given';

const planSchedule = askedOn('640 boards every 2 d: 10 d at 60, keeps 0.975; 15 d at 21, keeps 0.97');
const { schedule } = planSchedule;

function suggesting(change: Change, gain = '66'): Suggestion {
  return { change, batch: decimal(100), finishedPerWeek: decimal(4700), gain: decimal(gain) };
}

describe('a suggestion in words', () => {
  it.each<[Change, string, string]>([
    [{ kind: 'interval', to: decimal(2.5) }, 'Sow every 2.5 days instead of 2', 'interval'],
    [
      { kind: 'density', stage: 1, to: decimal(62) },
      'Set 62 plants on each nursery board instead of 60',
      'stage 1 density',
    ],
    [
      { kind: 'time', stage: 2, to: decimal(14) },
      'Keep plants 14 days on finishing boards instead of 15',
      'stage 2 time',
    ],
    [
      { kind: 'shift', stage: 1, to: decimal(13.5), from: 2, left: decimal(11.5) },
      'Keep plants 13.5 days on nursery boards and 11.5 days on finishing boards, as long in all as now',
      'stage 1 time',
    ],
  ])('%o', (change, words, part) => {
    expect(read(suggestionSentence(suggesting(change), planSchedule, [], english))).toBe(
      `${words}: 4,700 plants a week, 66 more.`,
    );
    expect(partOf(change)).toBe(part);
  });

  it('keeps a gain below one plant in sight', () => {
    const change: Change = { kind: 'interval', to: decimal(3) };
    expect(
      read(suggestionSentence(suggesting(change, '0.4'), planSchedule, plainly(', outside its range'), english)),
    ).toContain(', 0.4 more, outside its range.');
  });
});

describe('the few that are shown', () => {
  it('are the best, five at the most and two of one kind', () => {
    const few = fewSuggestions(suggestions(schedule));
    expect(few).toHaveLength(5);
    expect(few[0]).toEqual(suggestions(schedule)[0]);
    const kinds = few.map(({ change }) => change.kind);
    expect(Math.max(...kinds.map((kind) => kinds.filter((other) => other === kind).length))).toBe(2);
  });

  it('finish what they say on whole boards', () => {
    for (const { change, finishedPerWeek } of fewSuggestions(suggestions(schedule))) {
      expect(wholeBoards(changed(schedule, change)).finishedPerWeek.minus(finishedPerWeek).abs().lt('1e-9')).toBe(true);
    }
  });
});
