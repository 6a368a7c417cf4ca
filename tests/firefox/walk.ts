import type { DrivenPage } from './driver';

/** One thing that is tried, and what came of it: blank where all is well. */
export interface Step {
  readonly what: string;
  readonly fault: string;
}

const navigation = 'nav[aria-label=Questions]';
const firstField = '.entry input[type=text]';

async function until(page: DrivenPage, condition: string): Promise<boolean> {
  for (let i = 0; i < 200; i += 1) {
    if (await page.evaluate<boolean>(`Boolean(${condition})`)) return true;
    await new Promise((later) => setTimeout(later, 100));
  }
  return false;
}

/** Presses the first button of a name. */
async function press(page: DrivenPage, name: string, among = 'button, summary'): Promise<void> {
  const button = `[...document.querySelectorAll('${among}')].find((one) => one.textContent.trim().startsWith('${name}'))`;
  await until(page, `${button} !== undefined`);
  await page.evaluate(`${button}.click()`);
}

const valueOf = (page: DrivenPage): Promise<string> =>
  page.evaluate<string>(`document.querySelector('${firstField}').value`);

async function typed(page: DrivenPage, text: string): Promise<void> {
  await page.evaluate(`{ const field = document.querySelector('${firstField}'); field.focus(); field.select(); }`);
  await page.type(firstField, text);
  await page.keyboard.press('Enter');
}

async function everyQuestion(page: DrivenPage): Promise<string> {
  const labels = await page.evaluate<string[]>(
    `[...document.querySelectorAll('${navigation} button')].map((one) => one.textContent.trim())`,
  );
  if (labels.length < 7) return `only ${labels.length} questions`;
  for (const label of labels) {
    await press(page, label, `${navigation} button`);
    const region = `[...document.querySelectorAll('main h2')].some((one) => one.innerText.trim() === '${label}')`;
    if (!(await until(page, region))) return `${label} does not open`;
    await new Promise((later) => setTimeout(later, 1000));
    const said = await page.evaluate<string>('document.body.innerText');
    const slip = /\bNaN\b|\bundefined\b|could not be shown/.exec(said);
    if (slip !== null) return `${label} says ${slip[0]}`;
  }
  return '';
}

async function keeps(page: DrivenPage): Promise<string> {
  const before = await valueOf(page);
  await typed(page, '7.25');
  if ((await valueOf(page)) !== '7.25') return `typed 7.25, stands ${await valueOf(page)}`;
  await press(page, 'Undo');
  if (!(await until(page, `document.querySelector('${firstField}').value === '${before}'`))) return 'undo does nothing';
  await typed(page, '7.5');
  await new Promise((later) => setTimeout(later, 1000));
  await page.reload();
  await page.waitForSelector(firstField);
  const kept = await until(page, `document.querySelector('${firstField}').value === '7.5'`);
  return kept ? '' : `after a reload ${await valueOf(page)} stands`;
}

async function times(page: DrivenPage): Promise<string> {
  await press(page, 'Timing', `${navigation} button`);
  await page.waitForSelector('main input[list]');
  await page.type('main input[list]', 'lifting');
  await press(page, 'Start the watch');
  await new Promise((later) => setTimeout(later, 1200));
  await press(page, 'Stop');
  const said = await page.evaluate<string>('document.querySelector("main").innerText');
  return /1\.\d|[12] s/.test(said) ? '' : 'no time stands';
}

async function opensFile(page: DrivenPage, file: string): Promise<string> {
  const [chooser] = await Promise.all([page.waitForFileChooser(), page.click('::-p-text(Open a file)')]);
  await chooser.accept([file]);
  return (await until(page, `document.querySelector('h1')?.innerText.includes('nursery')`))
    ? ''
    : 'the file is not open';
}

/**
 * Walks through the app as a person does.
 * @param file a model whose title speaks of a nursery
 * @param goOffline turns the server off
 */
export async function walk(page: DrivenPage, file: string, goOffline: () => Promise<void>): Promise<Step[]> {
  const steps: Step[] = [];
  const step = async (what: string, deed: () => Promise<string>): Promise<void> => {
    const fault = await deed().catch((error: unknown) => String(error));
    steps.push({ what, fault });
  };
  await step('every question opens', () => everyQuestion(page));
  await step('a number typed, undone, typed and kept over a reload', () => keeps(page));
  await step('the watch times', () => times(page));
  await step('a file opens', () => opensFile(page, file));
  await step('with the server gone the page loads again and every question opens', async () => {
    if (!(await until(page, 'navigator.serviceWorker.controller !== null'))) return 'no service worker took over';
    await new Promise((later) => setTimeout(later, 5000));
    await goOffline();
    await page.reload();
    await page.waitForSelector(firstField);
    return everyQuestion(page);
  });
  return steps;
}
