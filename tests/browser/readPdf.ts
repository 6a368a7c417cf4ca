import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A run of text on a page of a PDF; lengths in points, from the page's lower left corner (ISO 32000-1, 8.3.2.3). */
interface PdfText {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface PdfPage {
  readonly width: number;
  readonly height: number;
  readonly runs: readonly PdfText[];
  /** All of its text in the order in which it was drawn, spaces of any kind and ends of lines as one space. */
  readonly text: string;
}

const soft = /\u00ad/g;

function runOf(item: { str: string; transform: number[]; width: number; height: number }): PdfText {
  const [, , , , x = NaN, y = NaN] = item.transform;
  return { text: item.str, left: x, right: x + item.width, bottom: y, top: y + item.height };
}

/** The text of each page of a PDF, and where it stands. */
export async function readPdf(bytes: Uint8Array): Promise<PdfPage[]> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const file = await task.promise;
  const pages: PdfPage[] = [];
  for (let number = 1; number <= file.numPages; number += 1) {
    const page = await file.getPage(number);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    const { items } = await page.getTextContent();
    const said = items.flatMap((item) => ('str' in item ? [item] : []));
    const text = said.map(({ str, hasEOL }) => (hasEOL ? `${str} ` : str)).join('');
    pages.push({
      width: right - left,
      height: top - bottom,
      // What is upright only: a chart's title on its side has its width upwards.
      runs: said.filter(({ str, transform }) => str.trim() !== '' && transform[1] === 0).map(runOf),
      text: text.replace(soft, '').replace(/\s+/g, ' '),
    });
  }
  await task.destroy();
  return pages;
}
