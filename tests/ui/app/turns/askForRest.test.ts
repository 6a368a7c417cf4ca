// @vitest-environment jsdom
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { pageMemory } from '../../../../src/ui/app/shelf/pageMemory';
import { askForRest } from '../../../../src/ui/app/turns/askForRest';

const fetched = vi.fn<(address: string) => Promise<Response>>(() => Promise.resolve(new Response('name')));

beforeEach(() => vi.stubGlobal('fetch', fetched));

afterEach(() => {
  document.head.innerHTML = '';
  localStorage.clear();
  fetched.mockClear();
  vi.unstubAllGlobals();
});

test('asks for what the page lists, in its order and place', () => {
  document.head.innerHTML =
    '<title>T</title><template id="rest"><link rel="modulepreload" href="a.js"><link rel="preload" href="b.css"></template>';
  expect(document.querySelectorAll('link')).toHaveLength(0);
  askForRest();
  expect([...document.querySelectorAll('link')].map((link) => link.getAttribute('href'))).toEqual(['a.js', 'b.css']);
  expect(document.querySelector('template')).toBeNull();
});

test('a page without a list, as while it is developed, asks for nothing of it', () => {
  askForRest();
  expect(document.querySelectorAll('link')).toHaveLength(0);
});

test('the first shipped model is asked for in a browser that was never here, and only there', () => {
  askForRest();
  expect(fetched.mock.calls.map(([address]) => address)).toEqual([expect.stringContaining('transplant-hire')]);
  fetched.mockClear();
  pageMemory.setMoved();
  askForRest();
  expect(fetched).not.toHaveBeenCalled();
});
