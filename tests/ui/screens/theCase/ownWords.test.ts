import { describe, expect, it } from 'vitest';
import type { Choice } from '../../../../src/ui/app/screenProps';
import { longest, ownWords } from '../../../../src/ui/screens/theCase/ownWords';

function words(title: () => string = () => 'Farm') {
  const kept = new Map<string, string>();
  const choice: Pick<Choice, 'get' | 'set'> = {
    get: (setting) => setting.read(kept.get(setting.key) ?? ''),
    set: (setting, value) => kept.set(setting.key, setting.write(value)),
  };
  return ownWords(choice, title);
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
