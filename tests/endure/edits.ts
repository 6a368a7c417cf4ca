import type { CDPSession, Page } from '@playwright/test';

/** What the page holds after garbage was collected. */
export interface Held {
  readonly edits: number;
  /** Bytes of the script's heap in use. */
  readonly heap: number;
  readonly nodes: number;
  readonly listeners: number;
  readonly documents: number;
}

const questions = ['What matters', 'Breakeven', 'How sure', 'Beds', 'Plans', 'The case', 'Timing'];
/** Edits between two changes of the question. */
const perQuestion = 20;
/** Edits after which another model is opened, which loads the page again as the shelf does. */
export const perModel = 2000;

/** Milliseconds between two counts, and how many are made at most until two agree. */
const between = 300;
const mostCounts = 20;

/** Counts what the page holds, after garbage was collected twice: what finalisers let go falls in the second. */
async function countNow(session: CDPSession, edits: number): Promise<Held> {
  await session.send('HeapProfiler.collectGarbage');
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  const { nodes, jsEventListeners, documents } = await session.send('Memory.getDOMCounters');
  return { edits, heap: usedSize, nodes, listeners: jsEventListeners, documents };
}

/** The same once the screen stands: on a slow machine it may still load, or the one before it not be gone. */
async function heldNow(page: Page, session: CDPSession, edits: number): Promise<Held> {
  let held = await countNow(session, edits);
  for (let i = 1, before = -1; i < mostCounts && held.nodes !== before; i += 1) {
    before = held.nodes;
    await page.waitForTimeout(between);
    held = await countNow(session, edits);
  }
  return held;
}

async function ask(page: Page, question: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: question }).click();
}

/** Opens the shelf and closes it. */
async function lookAtShelf(page: Page): Promise<void> {
  await page.locator('.shelf > summary').click();
  await page.locator('.shelf > summary').click();
}

/** Types a number into the first fields in turn, within the page, as keys would: one edit each; undoes every fourth. */
async function typeInto(page: Page, count: number, from: number): Promise<void> {
  await page.evaluate(
    async ([edits, first]) => {
      for (let i = first; i < first + edits; i += 1) {
        const fields = [...document.querySelectorAll<HTMLInputElement>('.entry input[type=text]')].slice(0, 8);
        const undo = [...document.querySelectorAll('button')].find((one) => one.textContent.trim() === 'Undo');
        const field = fields[i % Math.max(1, fields.length)];
        if (i % 4 === 3 && undo !== undefined) undo.click();
        else if (field !== undefined) {
          field.focus();
          const number = Number(field.value.replaceAll(',', ''));
          field.value = String(
            Number.isFinite(number) && number > 0 ? (number * (i % 2 ? 1.01 : 0.99)).toPrecision(4) : 1,
          );
          field.dispatchEvent(new InputEvent('input', { bubbles: true }));
          field.blur();
        }
        await new Promise((go) => (i % 5 === 0 ? requestAnimationFrame(go) : setTimeout(go)));
      }
    },
    [count, from] as const,
  );
}

/**
 * Edits a model as somebody does who never stops: numbers typed and undone, one question after the other, now and then
 * a look at the shelf.
 * @param every edits between two counts
 * @param onHeld is told each count
 */
export async function endure(
  page: Page,
  { edits, every, onHeld }: { edits: number; every: number; onHeld: (held: Held) => void },
): Promise<void> {
  const session = await page.context().newCDPSession(page);
  for (let done = 0; done < edits;) {
    await ask(page, questions[(done / perQuestion) % questions.length]!);
    await typeInto(page, perQuestion, done);
    done += perQuestion;
    if (done % 500 === 0) await lookAtShelf(page);
    if (done % every !== 0) continue;
    // Always counted on one and the same screen.
    await ask(page, questions[0]!);
    onHeld(await heldNow(page, session, done));
    if (done % perModel === 0) await page.reload();
    if (done % perModel === 0) await page.getByRole('navigation', { name: 'Questions' }).waitFor();
  }
}
