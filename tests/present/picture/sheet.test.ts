// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import { keyBox, keyLine, keyText } from '../../../src/present/picture/keySigns';
import { linesPicture, type LinesDrawing } from '../../../src/present/picture/labelledLines';
import { bar } from '../../../src/present/picture/marks';
import type { RowsPicture } from '../../../src/present/picture/rowsPicture';
import { sheetOf } from '../../../src/present/picture/sheet';
import type { TakenPicture } from '../../../src/present/picture/takenPicture';
import { createFormat } from '../../../src/present/text/numberFormat';
import { svgPaperAndInk } from './paperInk';

const english = createFormat('en-GB');
const source = 'Does it pay? · 9 March 2031 · Raftmargin';

const drawing: LinesDrawing = {
  lines: [
    {
      label: 'Price & <cost>',
      leading: true,
      points: [
        { x: 0, y: 0 },
        { x: 5, y: NaN },
        { x: 6, y: 6 },
        { x: 10, y: 1e6 },
      ],
    },
    {
      label: 'سعر الرأس',
      leading: false,
      points: [
        { x: 0, y: 10 },
        { x: 10, y: -10 },
      ],
    },
  ],
  across: { min: 0, max: 10, title: 'wage, EUR/h', tickAfter: ' %' },
  heights: { min: -10, max: 10 },
  today: { x: 5, text: 'today' },
  levels: [0],
  rings: [{ x: 5, y: 0 }],
};

function lines(title = 'Margin, EUR/year', sentence = 'Price moves it most.'): TakenPicture {
  return {
    title,
    sentence,
    key: (ink) => [
      keyLine('1 Price', ink.text, 3, [9, 5]),
      keyBox('B', ink.hatched(ink.planB), ink.planB),
      keyText('x'),
    ],
    draw: (ink, width) => linesPicture(drawing, ink, { width, height: 300 }, 91, english),
  };
}

function rows(): TakenPicture {
  return {
    title: 'Margin',
    sentence: '',
    key: () => [],
    draw: (ink, width): RowsPicture => ({
      width,
      height: 120,
      ink,
      padding: { left: 4, right: 4, top: 4, bottom: 0 },
      x: { min: -1200, max: 1200, title: 'EUR', tick: english.tick },
      rows: 2,
      foot: 24,
      under: (plot) => bar(plot, 0, 500, plot.y(0), { fill: ink.hatched(ink.planB), edge: ink.planB, thickness: 13 }),
      over: () => undefined,
    }),
  };
}

function drawn(taken: TakenPicture, width = 760): { page: XMLDocument; height: number } {
  const { paper, ink } = svgPaperAndInk();
  const sheet = sheetOf(taken, source, ink, width);
  sheet.draw(paper);
  const page = new DOMParser().parseFromString(
    paper.file(sheet.width, sheet.height, taken.title, taken.sentence),
    'image/svg+xml',
  );
  expect(page.querySelector('parsererror')).toBeNull();
  return { page, height: sheet.height };
}

const texts = (page: XMLDocument): string[] => [...page.querySelectorAll('text')].map(({ textContent }) => textContent);

/** The ends of a text across and its line, in pixels of the sheet. */
function placeOf(text: Element): { left: number; right: number; y: number } {
  const number = (name: string): number => Number(text.getAttribute(name));
  const moved = /translate\((\S+) (\S+)\)/.exec(text.closest('g[transform]')?.getAttribute('transform') ?? '') ?? [];
  const [x, width] = [number('x') + Number(moved[1] ?? 0), number('textLength')];
  const share = { start: 0, middle: 0.5, end: 1 }[text.getAttribute('text-anchor') ?? 'start'] ?? 0;
  return { left: x - share * width, right: x + (1 - share) * width, y: number('y') + Number(moved[2] ?? 0) };
}

describe('a chart of lines on a sheet', () => {
  const { page } = drawn(lines());

  it('has its title, its sentence, its key, its axes, its labels and its source', () => {
    expect(page.documentElement.querySelector('title')?.textContent).toBe('Margin, EUR/year');
    expect(texts(page)).toEqual(
      expect.arrayContaining([
        'Margin, EUR/year',
        'Price moves it most.',
        '1 Price',
        'B',
        '0 %',
        '10 %',
        '−10',
        'wage, EUR/h',
        'today',
        'Price & <cost>',
        'سعر الرأس',
        source,
      ]),
    );
  });

  it('breaks a line where there is no number, and cuts it off at the plot', () => {
    const cutOff = page.querySelector('g[clip-path]')!;
    const paths = [...cutOff.querySelectorAll('path')].map((path) => path.getAttribute('d') ?? '');
    expect(paths).toHaveLength(2);
    expect(paths[0]!.match(/M/g)).toHaveLength(2);
    expect(cutOff.querySelector('text')).toBeNull();
    expect(page.querySelector(cutOff.getAttribute('clip-path')!.slice(4, -1))).not.toBeNull();
  });

  it('has nothing that a page must bring along', () => {
    const all = page.documentElement.outerHTML;
    expect(all).not.toMatch(/var\(|NaN|undefined|\[object/);
    for (const [, id] of all.matchAll(/url\(#([\w-]+)\)/g)) expect(page.getElementById(id!)).not.toBeNull();
  });
});

it('a chart of rows has its bars, hatched ones too, and its axis', () => {
  const { page } = drawn(rows());
  expect(texts(page)).toEqual(expect.arrayContaining(['−1,000', '0', '1,000', 'EUR']));
  expect(page.querySelectorAll('pattern')).toHaveLength(1);
  expect(page.querySelector('rect[fill^="url("]')).not.toBeNull();
});

it('a shaded chart has its image within the plot', () => {
  const shaded: TakenPicture = {
    ...lines(),
    draw: (ink, width) => ({
      ...linesPicture(drawing, ink, { width, height: 300 }, 91, english),
      under: (plot) => plot.image(Uint32Array.of(1, 2, 3, 4), 2, 2),
    }),
  };
  const image = drawn(shaded).page.querySelector('image')!;
  expect(image.getAttribute('xlink:href')).toBe('data:image/png;base64,4x2x2');
  expect(Number(image.getAttribute('width'))).toBeGreaterThan(400);
});

describe('no text is cut', () => {
  it.each([
    ['300 characters', 'word '.repeat(60).trim()],
    ['300 characters without a space', 'x'.repeat(300)],
    ['300 characters from the right to the left', 'سعر '.repeat(75).trim()],
    ['what XML cannot hold', 'a\u0000b\u000bc\ud800d'],
  ])('%s', (_claim, text) => {
    const { page, height } = drawn(lines(text, text));
    for (const each of page.querySelectorAll('text')) {
      const { left, right, y } = placeOf(each);
      expect(left).toBeGreaterThanOrEqual(0);
      expect(right).toBeLessThanOrEqual(760);
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(height);
    }
  });
});
