import { underWay, wantOnPaper } from '../../app/layout/paper';
import { openPrintWait, type PrintWait } from './PrintWait';

/** What the page can print by itself; style sheets read it from `data-printed` on the root element. */
type PrintedPart = 'page' | 'question' | 'work' | 'lesson';

export interface Printing {
  readonly part: PrintedPart;
  /** Called before, where something has to be on the page for it. */
  readonly before?: (() => Promise<void>) | undefined;
  /** Called once it is printed or given up. */
  readonly after?: (() => void) | undefined;
}

const question = '.question-screen, .method';

/** The elements that are printed of each. */
const printedElements: Readonly<Record<PrintedPart, string>> = {
  page: 'main',
  question,
  work: '.work-week',
  lesson: '.lesson-sheet',
};

/** Milliseconds that printing waits; what is not there by then says so on paper. */
const patience = 120_000;
/** Milliseconds between two looks at whether all stands. */
const glance = 50;
/** As many looks one after another must find all standing, as what is ready may ask for more. */
const looks = 3;
/** Milliseconds after which a person is told what the page waits for. */
const untold = 400;

/** Whether all of a part stands: nothing in sight of it waits, and no work is under way. */
function stands(part: PrintedPart): boolean {
  if (underWay.size > 0) return false;
  const waiting = [...document.querySelectorAll(printedElements[part])].flatMap((element) => [
    ...element.querySelectorAll('[data-waits], [aria-busy="true"]'),
  ]);
  return !waiting.some((element) => element.checkVisibility());
}

function aMoment(): Promise<void> {
  return new Promise((passed) => setTimeout(passed, glance));
}

/** Waits until a part stands, or a person has it printed or given up before; returns whether to print. */
async function waitFor(part: PrintedPart): Promise<boolean> {
  const start = performance.now();
  let wait: PrintWait | undefined;
  try {
    for (let found = 0; found < looks && performance.now() - start < patience;) {
      await aMoment();
      found = stands(part) ? found + 1 : 0;
      if (performance.now() - start > untold) wait ??= openPrintWait();
      if (wait?.answer() !== undefined) return wait.answer() === 'now';
    }
    return true;
  } finally {
    wait?.close();
  }
}

/** One printing at a time: a second press while the first one waits changes nothing. */
let isWaiting = false;

/** Prints one part of the page once all of it stands, also what nobody has scrolled to. */
export async function printPart({ part, before, after }: Printing): Promise<void> {
  if (isWaiting) return;
  isWaiting = true;
  await before?.();
  wantOnPaper(part === 'page' ? question : printedElements[part]);
  const goes = await waitFor(part);
  isWaiting = false;
  const root = document.documentElement;
  const done = (): void => {
    delete root.dataset['printed'];
    wantOnPaper('');
    after?.();
  };
  if (!goes) return done();
  root.dataset['printed'] = part;
  addEventListener('afterprint', done, { once: true });
  print();
}
