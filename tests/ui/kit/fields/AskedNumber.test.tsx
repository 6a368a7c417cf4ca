// @vitest-environment jsdom
import { createSignal } from 'solid-js';
import { render } from 'solid-js/web';
import { expect, test } from 'vitest';
import { NumberField } from '../../../../src/ui/kit/fields/NumberField';
import { WholeField } from '../../../../src/ui/kit/fields/WholeField';

interface Asked {
  readonly field: HTMLInputElement;
  readonly said: () => string;
  readonly type: (text: string) => void;
  readonly standing: () => string;
  readonly setStanding: (text: string) => void;
}

/** A field of each kind for a number up to 100 that stands at 20. */
function asked(kind: 'number' | 'whole'): Asked {
  const host = document.createElement('div');
  document.body.replaceChildren(host);
  const [standing, setStanding] = createSignal('20');
  render(
    () =>
      kind === 'whole' ? (
        <WholeField
          label="Draws"
          number={Number(standing())}
          limits={{ least: 1, most: 100 }}
          onNumber={(number) => setStanding(String(number))}
        />
      ) : (
        <NumberField
          label="Within"
          unit="%"
          text={standing()}
          refuse={(text) => (Number(text) > 100 ? 'above 100.' : undefined)}
          stands="20 stands."
          onNumber={setStanding}
        />
      ),
    host,
  );
  const field = host.querySelector('input')!;
  return {
    field,
    said: () => host.querySelector('.fault')?.textContent ?? '',
    type: (text) => {
      field.value = text;
      field.dispatchEvent(new InputEvent('input', { bubbles: true }));
    },
    standing,
    setStanding,
  };
}

const kinds = ['number', 'whole'] as const;

test.each(kinds)('a %s field hands on what can be read, and keeps how it was typed until it is left', (kind) => {
  const { field, type, standing, said } = asked(kind);
  type(' 050 ');
  expect([standing(), field.value, said()]).toEqual([kind === 'whole' ? '50' : '050', ' 050 ', '']);
  field.dispatchEvent(new FocusEvent('blur'));
  expect(field.value).not.toBe(' 050 ');
});

test.each([
  ['number', 'above 100. 20 stands.'],
  ['whole', 'no whole number from 1 to 100: 500. Enter one.'],
] as const)('a %s field keeps and explains what it refuses, and the last number stands', (kind, message) => {
  const { field, type, standing, said } = asked(kind);
  type('500');
  field.dispatchEvent(new FocusEvent('blur'));
  expect([standing(), field.value, said()]).toEqual(['20', '500', message]);
  expect(field.getAttribute('aria-describedby')).toBe(field.closest('div')?.querySelector('.fault')?.id);
});

test.each(kinds)('Escape in a %s field goes back to the number that stands', (kind) => {
  const { field, type, said } = asked(kind);
  type('x');
  field.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }));
  expect([field.value, said()]).toEqual(['20', '']);
});

test.each(kinds)('another number that comes to stand takes the place of what a %s field refused', (kind) => {
  const { field, type, setStanding, said } = asked(kind);
  type('x');
  setStanding('30');
  expect([field.value, said()]).toEqual(['30', '']);
});
