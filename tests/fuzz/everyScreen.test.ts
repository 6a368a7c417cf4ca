import { expect, test } from 'vitest';
import { badNumbers, inputNames, shippedTexts, withInput, withInputs } from '../browser/badStates';
import { everyScreen } from './everyScreen';

/** Of the processor: a hundred times what a screen takes, and far below what a person takes for a page that froze. */
const longest = 20;
/** Of all states, one in so many is looked at. */
const every = 60;

const slips = /NaN|Infinity|∞|undefined|\bnull\b|\[object|(?<![.…])\.\.(?!\.)/;

/** Each input of each shipped model at each number, and all inputs at once. */
const states = shippedTexts().flatMap(([file, text]) =>
  [...inputNames(text), ''].flatMap((name) =>
    badNumbers.map((number) => ({
      title: `${file}, ${name === '' ? 'all' : name} at ${number}`,
      text: () => (name === '' ? withInputs(text, number) : withInput(text, name, number)),
    })),
  ),
);

test.each(states.filter((_state, i) => i % every === 17).map((state, i) => ({ ...state, i })))(
  'every screen works on $title',
  ({ text, i }) => {
    const { longest: took, said } = everyScreen(text(), i);
    expect(took[1], took[0]).toBeLessThan(longest);
    expect(said.filter((line) => slips.test(line))).toEqual([]);
  },
  120_000,
);

test('more plants on a board than anybody counts take no longer than few', () => {
  const [, hire] = shippedTexts().find(([file]) => file === 'transplant-hire')!;
  for (const number of ['1e300', '1e15', '123456789.5']) {
    const { longest: took } = everyScreen(withInput(hire, 'finishing_density', number), 1);
    expect(took[1], `${number}: ${took[0]}`).toBeLessThan(longest);
  }
}, 120_000);
