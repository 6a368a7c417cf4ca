import { fromBase64 } from '../../files/base64';
import type { Catalogue } from '../../language/catalogue';
import { speakOnPage } from '../app/language/pageLanguage';
import './liveFonts.css';
import '../style/tokens.css';
import '../style/page.css';
import '../style/head.css';
import '../style/numbers.css';
import '../style/inputs.css';
import '../style/columns.css';
import '../style/layout.css';
import '../style/print.css';
import './live.css';

/** The texts of the page's language, which stand packed in it; undefined in English. */
async function textsInPage(): Promise<Catalogue | undefined> {
  const bytes = fromBase64(document.getElementById('texts')?.textContent ?? '');
  if (bytes === undefined || bytes.length === 0) return undefined;
  const unpacked = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
  return JSON.parse(await new Response(unpacked).text()) as Catalogue;
}

async function start(): Promise<void> {
  const catalogue = await textsInPage();
  if (catalogue !== undefined) await speakOnPage({ tag: document.documentElement.lang, catalogue });
  // Only now, as many texts are made where their file is loaded.
  const { startCase } = await import('./startCase');
  startCase();
}

void start();
