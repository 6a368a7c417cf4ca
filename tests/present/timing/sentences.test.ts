import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { textOf } from '../../../src/present/text/phrase';
import { intervalText, moreSentence, stepSentence, termsText } from '../../../src/present/timing/sentences';
import { timing, english, only, read, shipped, study } from './trials';

const sentence = (text: string, terms = timing()): string =>
  read(textOf(stepSentence(only(text, terms), 'plant', terms, english)));
const more = (text: string, terms = timing()): string => read(textOf(moreSentence(only(text, terms), terms, english)));

describe('what the batches of a step say', () => {
  // Of 10 plants each at 11, 12, 13 and 12 s: mean 12, sd 0.8165, SE 0.40825, t(3) 3.1824: half 1.30.
  // Needed: (1.96 × 0.8165 / 0.6)² = 7.1, so 8.
  it('tells the mean, its interval and how many more to time', () => {
    expect(sentence('10 110; 10 120; 10 130; 10 120')).toBe(
      'Moving takes 12.0 s a plant, between 10.7 and 13.3 at 95 % confidence: time 4 more batches to be within 5 %.',
    );
  });

  it('says that none are needed where the interval is as close as asked', () => {
    expect(sentence('10 110; 10 120; 10 130; 10 120', timing({ within: decimal(11) }))).toContain(
      'that is within 11 %, no more batches are needed.',
    );
  });

  // Within 10 %: (1.96 × 0.8165 / 1.2)² = 1.8, so 2, while the half-width is 10.8 %.
  it('does not call an interval close that is wider than asked', () => {
    expect(sentence('10 110; 10 120; 10 130; 10 120', timing({ within: decimal(10) }))).toContain(
      'by their spread 2 batches were enough for 10 %, so these about do.',
    );
  });

  it('says of one batch that it tells nothing of the spread', () => {
    expect(sentence('60 756')).toBe(
      'Moving took 12.6 s a plant in one batch. ' +
        'One batch says nothing of how far the next may lie off: time at least two more.',
    );
  });

  it('never says that batches which agree need none', () => {
    const text = sentence('10 120; 20 240; 5 60');
    expect(text).toContain('took exactly 12.0 s a plant in all 3 batches.');
    expect(text).toContain('How many more it takes cannot be said.');
    expect(sentence('10 120; 20 240')).toContain('in both batches.');
  });

  // 10 and 14 s: mean 12, SE 2, t(1) 12.706: from −13.4 to 37.4. Needed: (1.96 × 2.8284 / 0.6)² = 85.4, so 86.
  it('warns of an interval below 0', () => {
    expect(sentence('10 100; 10 140')).toBe(
      'Moving took 12 s a plant in 2 batches, with an interval from −13 to 37 at 95 % ' +
        'confidence. It reaches down to nothing or below, which no time can be. So few batches say little: ' +
        'time 84 more batches to be within 5 %, as far as these can tell.',
    );
  });

  it('warns of many batches that lie far apart', () => {
    expect(sentence('10 20; 10 300; 10 50; 10 250', timing({ within: decimal(20) }))).toMatch(
      /Batches so far apart say little: time \d+ more batches/,
    );
  });

  it('does not ask for more than anyone will time', () => {
    expect(sentence('10 20; 10 300; 10 50; 10 250', timing({ within: decimal('0.5') }))).toContain(
      'to be within 0.5 % would take more batches than anyone will time',
    );
  });

  it('asks for the name of a step where there is none', () => {
    expect(sentence('step,plants,seconds\n,10,120\n')).toBe('1 batch without a step: name it below, then it counts.');
  });

  it('says where no batch can be counted', () => {
    expect(sentence('ten 120')).toBe('No batch of moving can be counted yet: fill it in or mend it below.');
  });
});

describe('what else is told of a step', () => {
  it('has the standard time of either allowance', () => {
    expect(more('10 120; 10 130')).toContain('With an allowance of 15 % of the job (× 1.15), the standard time is 14');
    expect(more('10 120; 10 130', timing({ allowanceOf: 'day' }))).toContain(
      '15 % of the day (÷ 0.85), the standard time is 15',
    );
  });

  it('has no standard time where the allowance is the whole day', () => {
    const terms = { ...timing(), hasStandardTime: false };
    expect(textOf(moreSentence(only('10 120', terms), terms, english))).not.toContain('standard');
    expect(termsText(terms, english)).not.toContain('standard');
  });

  it('counts what is left out', () => {
    expect(more('10 120; 10 x')).toContain('1 batch is left out until filled in or mended.');
    expect(more('10 120; 10 x; 0 5')).toContain('2 batches are left out until filled in or mended.');
  });

  // 6 of 729 plants of the shipped trials.
  it('has the plants lost where someone counted', () => {
    const [, moved] = study(shipped);
    expect(read(textOf(moreSentence(moved!, timing(), english)))).toContain('Lost where counted: 0.82 %.');
    expect(more('10 120')).not.toContain('Lost');
  });
});

it('a time in short has its interval where there is one', () => {
  expect(read(intervalText(only('10 110; 10 120; 10 130; 10 120').time!, english))).toBe('12.0 s, 10.7 to 13.3');
  expect(read(intervalText(only('60 756').time!, english))).toBe('12.6 s, one batch');
  expect(read(intervalText(only('10 120; 10 120').time!, english))).toBe('12.0 s, batches agree');
});
