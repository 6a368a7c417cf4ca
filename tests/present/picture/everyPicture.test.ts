// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import { sheetOf } from '../../../src/present/picture/sheet';
import type { TakenPicture } from '../../../src/present/picture/takenPicture';
import { everyPicture, plansTaken } from './everyPicture';
import { linesKey } from '../../../src/present/picture/linesKey';
import { svgPaperAndInk } from './paperInk';

const width = 760;

/** A picture as its SVG file and as that is read strictly as XML (jsdom reads it with saxes). */
function fileOf(taken: TakenPicture): { text: string; root: Element; height: number } {
  const { paper, ink } = svgPaperAndInk();
  const sheet = sheetOf(taken, 'Does it pay? · 9 March 2031 · Raftmargin', ink, width);
  sheet.draw(paper);
  const text = paper.file(sheet.width, sheet.height, taken.title, taken.sentence);
  const page = new DOMParser().parseFromString(text, 'image/svg+xml');
  expect(page.querySelector('parsererror')?.textContent).toBeUndefined();
  return { text, root: page.documentElement, height: sheet.height };
}

/** How far the groups around an element move it. */
function movedBy(element: Element): [number, number] {
  let [right, down] = [0, 0];
  for (let at = element.parentElement; at !== null; at = at.parentElement) {
    const [, x = 0, y = 0] = /^translate\((\S+) (\S+)\)$/.exec(at.getAttribute('transform') ?? '') ?? [];
    [right, down] = [right + Number(x), down + Number(y)];
  }
  return [right, down];
}

/** The box of a text in the picture: its length across, and its type above and below its line. */
function boxOf(text: Element): { left: number; right: number; top: number; bottom: number } {
  const number = (name: string): number => Number(text.getAttribute(name));
  const [right, down] = movedBy(text);
  const share = { start: 0, middle: 0.5, end: 1 }[text.getAttribute('text-anchor') ?? 'start'] ?? NaN;
  const [x, y, length, size] = [number('x') + right, number('y') + down, number('textLength'), number('font-size')];
  return { left: x - share * length, right: x + (1 - share) * length, top: y - size * 0.8, bottom: y + size * 0.25 };
}

describe.each(Object.entries(everyPicture))('%s', (_kind, taken) => {
  const { text, root, height } = fileOf(taken());

  it('is sound XML of the namespace of SVG, with a name and a description', () => {
    expect(root.namespaceURI).toBe('http://www.w3.org/2000/svg');
    expect(root.getAttribute('role')).toBe('img');
    for (const [attribute, element] of [
      ['aria-labelledby', 'title'],
      ['aria-describedby', 'desc'],
    ] as const) {
      const named = root.querySelector(`#${root.getAttribute(attribute)}`);
      expect(named?.localName).toBe(element);
      expect(named?.textContent.trim()).not.toBe('');
    }
  });

  it('has no attribute that is empty or no number where one belongs, and refers to nothing that is not in it', () => {
    expect(text).not.toMatch(/NaN|undefined|Infinity|null|\[object|var\(/);
    const attributes = [...root.querySelectorAll('*')].flatMap((element) => [...element.attributes]);
    expect(attributes.filter(({ value }) => value.trim() === '').map(({ name }) => name)).toEqual([]);
    const numeric = ['x', 'y', 'width', 'height', 'textLength', 'font-size', 'stroke-width', 'opacity'];
    const numbers = attributes.filter(({ name }) => numeric.includes(name));
    expect(numbers.filter(({ value }) => !Number.isFinite(Number(value)))).toEqual([]);
    expect(numbers.filter(({ name, value }) => /width|height|size/.test(name) && Number(value) < 0)).toEqual([]);
    for (const [, id] of text.matchAll(/url\(#([\w-]+)\)/g)) expect(root.querySelector(`#${id}`)).not.toBeNull();
    const ids = [...root.querySelectorAll('[id]')].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('has paths that are drawn from finite places', () => {
    for (const path of root.querySelectorAll('path')) {
      expect(path.getAttribute('d')).toMatch(/^M-?[\d.e-]+ -?[\d.e-]+(?:[MLAZ][-\d. e]*)*$/);
    }
  });

  it('has every text within it', () => {
    const [, , wide, high] = (root.getAttribute('viewBox') ?? '').split(' ').map(Number);
    expect([wide, high]).toEqual([width, height]);
    const outside = [...root.querySelectorAll('text')]
      .map((each) => ({ text: each.textContent, ...boxOf(each) }))
      .filter(({ left, right, top, bottom }) => !(left >= 0 && right <= width && top >= 0 && bottom <= height));
    expect(outside).toEqual([]);
  });
});

it('the lines of plans have their letters in the key, from C on too, and stand there as they are drawn', () => {
  const { ink } = svgPaperAndInk();
  expect(linesKey(plansTaken(), ink).map(({ text }) => text)).toEqual(['A Foam', 'C Rockwool', 'D Holder', 'B Peat']);
  const { root } = fileOf(everyPicture['lines of all plans']!());
  const key = [...root.querySelectorAll(':scope > path')].slice(0, 4);
  expect(key.map((line) => [line.getAttribute('stroke'), line.getAttribute('stroke-dasharray')])).toEqual([
    [ink.planA, null],
    [ink.text, '2 3'],
    [ink.text, '12 4 2 4'],
    [ink.planB, '8 5'],
  ]);
});
