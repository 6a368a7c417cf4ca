import { readdirSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { createHash } from 'node:crypto';
import { gzipSync } from 'node:zlib';
import { build, type InlineConfig, type Plugin, type Rolldown } from 'vite';
import solid from 'vite-plugin-solid';
import { livePageName } from './src/files/live/livePageName.ts';
import type { Catalogue, LanguageTexts } from './src/language/catalogue.ts';

/** The texts of each language other than English, by its tag. */
function catalogues(): Map<string, Catalogue> {
  const folder = new URL('src/language/catalogues/', import.meta.url);
  return new Map(
    readdirSync(folder).map((file) => [
      basename(file, '.json'),
      JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as Catalogue,
    ]),
  );
}

/** Unpacks the program in the page and starts it; the policy names the sum of each. */
const STARTER = `(async () => {
const packed = atob(document.getElementById('program').textContent);
const bytes = Uint8Array.from(packed, (character) => character.charCodeAt(0));
const script = document.createElement('script');
script.textContent = await new Response(
new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'))).text();
document.body.append(script);
})();`;

/** All scripts and all styles of the page. */
interface Built {
  readonly program: string;
  readonly style: string;
}

/** Nothing from outside, and no script or style but those of the page, by their sums. */
function policyOf(scripts: readonly string[], style: string): string {
  const sum = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
  return [
    "default-src 'none'",
    `script-src ${scripts.map(sum).join(' ')}`,
    `style-src ${sum(style)}`,
    'img-src data:',
    'font-src data:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
}

function packed(text: string, form: 'base64' | 'base64url' = 'base64'): string {
  return gzipSync(text, { level: 9 }).toString(form);
}

/** Escaped characters of a script as themselves. */
function unescaped(script: string): string {
  return script
    .replace(/\\u\{?([\da-f]{4})\}?|\\x([\da-f]{2})/gi, (_sign, long: string | undefined, short = '') =>
      String.fromCharCode(parseInt(long ?? String(short), 16)),
    )
    .replaceAll('\\n', '\n')
    .replace(/\\([`'"$\\])/g, '$1');
}

/** The texts that a program says, and those of units, which it finds in data. */
function textsIn(program: string, texts: Catalogue['texts']): Catalogue['texts'] {
  const source = unescaped(program);
  const isSaid = (key: string): boolean => {
    const [english = '', context = ''] = key.split(' ¦ ');
    return context === 'unit' || english.split(/\{\d+\}/).every((piece) => source.includes(piece));
  };
  return Object.fromEntries(Object.entries(texts).filter(([key]) => isSaid(key)));
}

/** The texts of the program in the page; those of the shipped models are in the case, where it is of one. */
function packedTexts(program: string, { catalogue }: LanguageTexts): string {
  const texts = { ...catalogue, texts: textsIn(program, catalogue.texts), models: {} };
  return `<script type="text/plain" id="texts">${packed(JSON.stringify(texts), 'base64url')}</script>\n`;
}

/** The page without a case, which `src/files/live/liveFile.ts` puts into its three places. */
function pageOf({ program, style }: Built, language: LanguageTexts | undefined): string {
  return `<!doctype html>
<html lang="${language?.tag ?? 'en'}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policyOf([STARTER, program], style)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title><!--title--></title>
<style>${style}</style>
</head>
<body>
<div id="app"><!--text--></div>
<!--case-->
${language === undefined ? '' : packedTexts(program, language)}<script type="text/plain" id="program">${packed(program)}</script>
<script>${STARTER}</script>
</body>
</html>
`;
}

function builtOf({ output }: Rolldown.RolldownOutput): Built {
  const program = output.map((file) => (file.type === 'chunk' ? file.code : '')).join('');
  const style = output.map((file) => (file.type === 'asset' && file.fileName.endsWith('.css') ? file.source : ''));
  return { program, style: style.join('') };
}

const config: InlineConfig = {
  configFile: false,
  logLevel: 'error',
  publicDir: false,
  plugins: [solid()],
  build: {
    write: false,
    cssCodeSplit: false,
    // Fonts stand in the page.
    assetsInlineLimit: Infinity,
    rolldownOptions: {
      input: 'src/ui/live/start.ts',
      // What loads parts of a site later has nothing to load here.
      transform: { define: { 'import.meta': '{}' } },
      output: { format: 'iife', codeSplitting: false },
    },
  },
};

/** The page in each language, by its name. */
async function builtPages(): Promise<Map<string, string>> {
  const built = builtOf((await build(config)) as Rolldown.RolldownOutput);
  const pages = [...catalogues()].map(
    ([tag, catalogue]) => [livePageName(tag), pageOf(built, { tag, catalogue })] as const,
  );
  return new Map([[livePageName(undefined), pageOf(built, undefined)], ...pages]);
}

/** Puts the page of a live case among what is built, and makes it anew for each that asks the development server. */
export function livePage(): Plugin {
  return {
    name: 'live-page',
    async generateBundle() {
      for (const [fileName, source] of await builtPages()) this.emitFile({ type: 'asset', fileName, source });
    },
    configureServer({ middlewares }) {
      for (const name of [undefined, ...catalogues().keys()].map(livePageName)) {
        middlewares.use(`/${name}`, (_request, response, failed) => {
          builtPages().then((pages) => response.end(pages.get(name)), failed);
        });
      }
    },
  };
}

/** Puts the texts of the other languages beside the command line. */
export function languages(): Plugin {
  return {
    name: 'languages',
    generateBundle() {
      for (const [tag, catalogue] of catalogues()) {
        this.emitFile({ type: 'asset', fileName: `${tag}.json`, source: JSON.stringify(catalogue) });
      }
    },
  };
}
