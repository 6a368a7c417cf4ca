import { describe, expect, it } from 'vitest';
import { longest, ownWords } from '../../../../src/ui/screens/theCase/ownWords';

function words(title: () => string = () => 'Farm') {
  const kept = new Map<string, string>();
  return ownWords({ setting: (key) => kept.get(key) ?? '', setSetting: (key, text) => kept.set(key, text) }, title);
}

describe('a person’s own words', () => {
  it('are kept as they are, for each model apart', () => {
    let title = 'Farm';
    const own = words(() => title);
    own.write('words', 'One.\n\nTwo <b>.');
    expect(own.text('words')).toBe('One.\n\nTwo <b>.');
    title = 'Another farm';
    expect(own.text('words')).toBe('');
  });

  it('have a length that is not passed', () => {
    const own = words();
    own.write('words', 'x'.repeat(longest.words + 1));
    expect(own.text('words')).toHaveLength(longest.words);
  });
});
