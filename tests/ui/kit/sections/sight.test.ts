// @vitest-environment jsdom
import { createRoot } from 'solid-js';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { wantOnPaper } from '../../../../src/ui/app/layout/paper';
import { createSight } from '../../../../src/ui/kit/sections/sight';

/** Tells the page that an element came into sight or left it. */
let tell: (target: Element, isIntersecting: boolean) => void;

class Observer {
  constructor(told: (entries: { target: Element; isIntersecting: boolean }[]) => void) {
    tell = (target, isIntersecting) => told([{ target, isIntersecting }]);
  }
  observe(): void {}
  unobserve(): void {}
}

beforeEach(() => {
  vi.stubGlobal('IntersectionObserver', Observer);
  document.body.innerHTML = '<main class="question-screen"><section></section></main>';
});
afterEach(() => {
  wantOnPaper('');
  vi.unstubAllGlobals();
});

const section = (): Element => document.querySelector('section')!;

/** Asks as a component does: its element is there only once its code has run. */
function ask() {
  return createRoot((dispose) => {
    const made: Element[] = [];
    const inSight = createSight(() => made[0]);
    made.push(section());
    return { inSight, dispose };
  });
}

test('an element is in sight while the browser says so', () => {
  const { inSight, dispose } = ask();
  const seen = [inSight()];
  for (const intersects of [true, false]) {
    tell(section(), intersects);
    seen.push(inSight());
  }
  expect(seen).toEqual([false, true, false]);
  dispose();
});

test('while it is wanted on paper it counts as in sight', () => {
  const { inSight, dispose } = ask();
  const seen = [inSight()];
  for (const elements of ['.question-screen', '.method', '']) {
    wantOnPaper(elements);
    seen.push(inSight());
  }
  expect(seen).toEqual([false, true, false, false]);
  dispose();
});

test('so it does when it is made while it is wanted, as what a section loads for paper is', () => {
  wantOnPaper('.question-screen');
  const { inSight, dispose } = ask();
  expect(inSight()).toBe(true);
  wantOnPaper('');
  expect(inSight()).toBe(false);
  dispose();
});
