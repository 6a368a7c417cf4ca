// @vitest-environment jsdom
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { pageMemory } from '../../../../src/ui/app/shelf/pageMemory';
import { askForRest } from '../../../../src/ui/app/turns/askForRest';

const fetched = vi.fn<(address: string) => Promise<Response>>(() => Promise.resolve(new Response('name')));

const fonts = vi.fn<(font: string) => Promise<unknown>>(() => Promise.resolve());

beforeEach(() => {
  vi.stubGlobal('fetch', fetched);
  Object.assign(document, { fonts: { load: fonts } });
});

afterEach(() => {
  document.head.innerHTML = '';
  localStorage.clear();
  fetched.mockClear();
  fonts.mockClear();
  vi.unstubAllGlobals();
});

test('asks for what the page lists, in its order and place, and for the fonts once the styles are there', async () => {
  document.head.innerHTML =
    '<title>T</title><template id="rest"><link rel="modulepreload" href="a.js"><link rel="stylesheet" href="b.css"></template>';
  expect(document.querySelectorAll('link')).toHaveLength(0);
  const asked = askForRest();
  expect([...document.querySelectorAll('link')].map((link) => link.getAttribute('href'))).toEqual(['a.js', 'b.css']);
  expect(document.querySelector('template')).toBeNull();
  expect(fonts).not.toHaveBeenCalled();
  document.querySelector('link[rel=stylesheet]')!.dispatchEvent(new Event('load'));
  await asked;
  expect(fonts).toHaveBeenCalledTimes(2);
});

test('a page without a list, as while it is developed, asks for nothing of it', async () => {
  await askForRest();
  expect(document.querySelectorAll('link')).toHaveLength(0);
});

test('the first shipped model is asked for in a browser that was never here, and only there', async () => {
  await askForRest();
  expect(fetched.mock.calls.map(([address]) => address)).toEqual([expect.stringContaining('transplant-hire')]);
  fetched.mockClear();
  pageMemory.setMoved();
  await askForRest();
  expect(fetched).not.toHaveBeenCalled();
});
