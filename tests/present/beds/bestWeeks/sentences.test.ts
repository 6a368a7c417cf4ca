import { describe, expect, it } from 'vitest';
import type { Way } from '../../../../src/study/best';
import { bestWeeksSentences } from '../../../../src/present/beds/bestWeeks/sentences';
import { namesOf } from '../../../../src/present/beds/names';
import { plainly } from '../../../../src/present/text/phrase';
import type { BestChoice } from '../../../../src/present/beds/bestWeeks/options';
import { bed, lookOf } from './given';
import { english, read } from '../given';

function say(
  text: string,
  choice: Partial<BestChoice> = {},
  way: Way = 'highest',
): Record<'main' | 'more' | 'caution' | 'scope', string> {
  const result = lookOf(text, choice, way);
  const { view } = result.ask.question;
  const speech = {
    result: view.model.cells[view.result]!,
    subject: plainly('the margin'),
    names: namesOf(new Map(), 2),
  };
  const { main, more, caution, scope } = bestWeeksSentences(result, speech, english);
  return { main: read(main), more: read(more), caution: read(caution), scope: read(scope) };
}

const top = (days: number, holes: number): string =>
  `(1000 - ((early - ${days} * one) / one) ^ 2 - ((holes - ${holes} * hole) / hole) ^ 2) * unit`;

describe('the best weeks say', () => {
  it('how much better the best is than today', () => {
    // Today: 1000 − 2² − 10² = 896.
    expect(say(bed(top(12, 70))).main).toBe(
      'The margin is highest with 12 days on nursery boards at 70 plants per board: ' +
        '1,000 EUR a year, 104.00 EUR a year more than with today’s 10 days at 60 plants per board.',
    );
  });

  it('how flat it is', () => {
    expect(say(bed(top(12, 70))).more).toBe(
      'At 70 plants per board it stays within 2 % of the best between 8 and 15 days; ' +
        'with 12 days, only at 70 plants per board.',
    );
  });

  it('that today is best', () => {
    const { main, caution } = say(bed(top(10, 60)));
    expect(main).toBe(
      'Today’s 10 days at 60 plants per board on nursery boards are the best of all looked at: the margin is 1,000 EUR a year.',
    );
    expect(caution).toBe('');
  });

  it('of two or three that are equally good which they are, of more how many', () => {
    const twins = '(1000 - abs(abs((early - 10 * one) / one) - 2) - ((holes - 60 * hole) / hole) ^ 2) * unit';
    expect(say(bed(twins)).more).toContain('Just as good: 12 days at 60 plants per board.');
    expect(say(bed('holes * unit / hole + early * 0 * unit / one')).more).toContain(
      '10 other choices looked at are just as good.',
    );
  });

  it('which checks fail there, though they hold today', () => {
    const check = 'tight: holes < 65 * hole | label: The holes are too close. | role: check';
    expect(say(`${bed(top(12, 70))}\n${check}`).caution).toBe('A check fails there: The holes are too close.');
    expect(say(`${bed(top(12, 60))}\n${check}`).caution).toBe('');
  });

  it('that it lies at the crowded edge, and what to make of it', () => {
    const { caution } = say(bed('(early / one + holes / hole) * unit'));
    expect(caution).toContain(
      'That is the longest time and the most plants per board looked at: something further out may be better still.',
    );
    expect(caution).toContain('nothing in a model makes a crowded day cost anything');
  });

  it('that it lies at another edge, without a word of crowding', () => {
    expect(say(bed('-1 * (early / one + holes / hole) * unit')).caution).toBe(
      'That is the shortest time and the fewest plants per board looked at: something further out may be better still.',
    );
  });

  it('which end is crowded where the entry that moves is the room for a plant', () => {
    const room =
      'area [cm^2/board]: 6000\n space [cm^2/plant]: 100 | step: 5\n holes [plant/board]: area / space | crop: stage 1 density';
    const { main, caution } = say(bed('(holes / hole - ((early - 10 * one) / one) ^ 2) * unit', room), {
      density: 'space',
    });
    expect(main).toContain('at 50 cm² per plant (120 plants per board): 120.00 EUR a year');
    expect(caution).toContain('That is the most plants per board looked at');
  });

  it('that neither entry moves the result', () => {
    const told = say(bed('7 * unit + 0 * (early / one + holes / hole) * unit'));
    expect(told).toMatchObject({
      main: 'The margin is 7.00 EUR a year whatever the time and density on nursery boards.',
      more: '',
      caution: '',
    });
  });

  it('that nothing can be computed', () => {
    expect(say(bed('unit * sqrt(-1 * early / early)')).main).toBe(
      'The margin cannot be computed at any time or density looked at.',
    );
  });

  it('what was looked at and what was held', () => {
    expect(say(bed(top(12, 70))).scope).toBe(
      'Looked at: 5 to 15 days, 30 to 90 plants per board. ' +
        'Finishing time gives back each day, so that the total time stays.',
    );
    expect(say(bed(top(12, 70)), { held: 'next' }).scope).toBe(
      'Looked at: 5 to 15 days, 30 to 90 plants per board. No other time moves with it.',
    );
  });

  it('the lowest where that is best', () => {
    expect(say(bed(top(12, 70)), {}, 'lowest').main).toMatch(
      /^The margin is lowest with 5 days on nursery boards at 30 plants per board: −649.00/,
    );
  });
});
