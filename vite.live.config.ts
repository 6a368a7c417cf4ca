import { createHash } from 'node:crypto';
import { gzipSync } from 'node:zlib';
import { build, type InlineConfig, type Plugin, type Rolldown } from 'vite';
import solid from 'vite-plugin-solid';

/** Under this name the page of a live case stands in what is built; the case is put into a copy of it. */
const livePageFile = 'live-page.html';

/** Unpacks the program in the page and starts it; the policy names the sum of each. */
const STARTER = `(async () => {
const packed = atob(document.getElementById('program').textContent);
const bytes = Uint8Array.from(packed, (character) => character.charCodeAt(0));
const script = document.createElement('script');
script.textContent = await new Response(
new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'))).text();
document.body.append(script);
})();`;

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

/** The page without a case, which `src/files/live/liveFile.ts` puts into its three places. */
function pageOf(program: string, style: string): string {
  return `<!doctype html>
<html lang="en">
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
<script type="text/plain" id="program">${gzipSync(program, { level: 9 }).toString('base64')}</script>
<script>${STARTER}</script>
</body>
</html>
`;
}

function onePage({ output }: Rolldown.RolldownOutput): string {
  const program = output.map((file) => (file.type === 'chunk' ? file.code : '')).join('');
  const style = output.map((file) => (file.type === 'asset' && file.fileName.endsWith('.css') ? file.source : ''));
  return pageOf(program, style.join(''));
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
      input: 'src/ui/live/start.tsx',
      // What loads parts of a site later has nothing to load here.
      transform: { define: { 'import.meta': '{}' } },
      output: { format: 'iife', codeSplitting: false },
    },
  },
};

async function builtPage(): Promise<string> {
  return onePage((await build(config)) as Rolldown.RolldownOutput);
}

/** Puts the page of a live case among what is built, and makes it anew for each that asks the development server. */
export function livePage(): Plugin {
  return {
    name: 'live-page',
    async generateBundle() {
      this.emitFile({ type: 'asset', fileName: livePageFile, source: await builtPage() });
    },
    configureServer({ middlewares }) {
      middlewares.use(`/${livePageFile}`, (_request, response, failed) => {
        builtPage().then((page) => response.end(page), failed);
      });
    },
  };
}
