import { readdirSync } from 'node:fs';
import type { HtmlTagDescriptor, Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import solid from 'vite-plugin-solid';
import { defineConfig } from 'vitest/config';
import { livePage } from './vite.live.config.ts';

/** Nothing but the app's own files, and nothing sent elsewhere. */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** What a page cannot say of itself: no other page may show it in a frame. */
const SERVED_POLICY = `${POLICY}; frame-ancestors 'none'`;

/** The development server puts styles into the page as text, which the built site never does. */
const DEVELOPMENT_POLICY = POLICY.replace("style-src 'self'", "style-src 'self' 'unsafe-inline'");

/** The policy as the first element of the head, so that it holds for all that follows. */
function contentSecurityPolicy(): Plugin {
  return {
    name: 'content-security-policy',
    transformIndexHtml: (_html, { server }) => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: server ? DEVELOPMENT_POLICY : POLICY },
        injectTo: 'head-prepend',
      },
    ],
  };
}

/** A file of the site that is asked for ahead. */
function link(attrs: Record<string, string>): HtmlTagDescriptor {
  return { tag: 'link', attrs: { ...attrs, crossorigin: true } };
}

/** What `src/main.ts` loads, one after the other. */
const BEGUN = [
  /src[\\/]formula[\\/]mathParser\.ts$/,
  /src[\\/]files[\\/]readModel\.ts$/,
  /src[\\/]ui[\\/]frame[\\/]start\.tsx$/,
];

/**
 * Lists in the page, in a template, what draws it: scripts and styles. `src/ui/app/turns/askForRest.ts` asks for
 * all of them at once as soon as the first frame is drawn. The script that begins the page would ask for them one after
 * the other, and were they in the page itself, the first frame would wait for what shares the line with its style.
 */
function restOfStart(): Plugin {
  return {
    name: 'rest-of-start',
    transformIndexHtml: (_html, { bundle = {} }) => {
      const chunks = new Map(
        Object.values(bundle).flatMap((file) => (file.type === 'chunk' ? [[file.fileName, file]] : [])),
      );
      const begun = [...chunks.values()].find(({ isEntry }) => isEntry);
      if (begun === undefined) return [];
      const needed = new Set<string>();
      const need = (name: string): void => {
        if (needed.has(name)) return;
        needed.add(name);
        chunks.get(name)?.imports.forEach(need);
      };
      for (const { fileName, facadeModuleId } of chunks.values()) {
        if (BEGUN.some((part) => part.test(facadeModuleId ?? ''))) need(fileName);
      }
      const there = new Set([begun.fileName, ...begun.imports]);
      const scripts = [...needed].filter((name) => !there.has(name));
      const styles = [...needed].flatMap((name) => [...(chunks.get(name)?.viteMetadata?.importedCss ?? [])]);
      const children = [
        ...styles.map((file) => link({ rel: 'stylesheet', href: `./${file}` })),
        ...scripts.map((file) => link({ rel: 'modulepreload', href: `./${file}` })),
      ];
      return [{ tag: 'template', attrs: { id: 'rest' }, children, injectTo: 'head' }];
    },
  };
}

/**
 * What every page needs to read, check and draw a model, packed in one script: cut up by who else asks for which part
 * of it, it would be some 3 kB more.
 */
const ENGINE = [
  /src[\\/](?:core|formula)[\\/](?!mended|given|checksum)/,
  /src[\\/]model[\\/]\w+\.ts$/,
  /src[\\/]files[\\/](?:csv|table|read(?!Trials)|decode)\w*\.ts$/,
  /node_modules[\\/](?:decimal\.js|papaparse|solid-js)[\\/]/,
];

/** What reads formulas: it takes a turn to begin, as the rest of the engine does. */
const PARSER = [/src[\\/]formula[\\/]mathParser\.ts$/, /node_modules[\\/]mathjs[\\/]/];

/**
 * Small parts that the first question shows, as every question with a picture does, in one script for the same reason:
 * each in a file of its own would be some 2 kB more.
 */
const SHOWN = [
  /src[\\/]ui[\\/]kit[\\/]sections[\\/](?:AnswerText|LiveText|NumbersBehind|QuestionScreen|ResultAnswer)\.tsx$/,
  /src[\\/]ui[\\/]kit[\\/]choosers[\\/]\w+\.tsx$/,
  /src[\\/]ui[\\/]kit[\\/]charts[\\/](?:ChartCanvas|canvasPlot|chartArea|hatch|imageCanvas|ink|measure|rows)\.tsx?$/,
  /src[\\/]ui[\\/]kit[\\/]takeOut[\\/]TakeOut\.tsx$/,
  /src[\\/]present[\\/]picture[\\/](?:axisLabels|ink|marks|rowsFrame|ticks)\.ts$/,
  /src[\\/]present[\\/]table[\\/]takeOutName\.ts$/,
];

/**
 * What chooses the language, which stands before any file in which texts are made is loaded: all that `src/main.ts`
 * itself asks for.
 */
const LANGUAGE = [
  /src[\\/]language[\\/](?!catalogue)\w+\.ts$/,
  /src[\\/]ui[\\/]app[\\/]language[\\/]\w+\.ts$/,
  /src[\\/]ui[\\/]app[\\/]preferences[\\/](?:textStorage|shownScheme)\.ts$/,
  /src[\\/]ui[\\/]app[\\/]turns[\\/](?:slice|askForRest|loadEngine)\.ts$/,
  /src[\\/]ui[\\/]app[\\/](?:files[\\/]shippedModels|shelf[\\/]pageMemory)\.ts$/,
  /vite[\\/]preload-helper/,
];

/** What draws the page, and the question that stands beside the numbers at first: each with all that it needs. */
const START = /src[\\/]ui[\\/]frame[\\/]start\.tsx$/;
const FIRST = /src[\\/]ui[\\/]screens[\\/]whatMatters[\\/](?:WhatMatters|tornado[\\/]\w+)\.tsx$/;

/** A language's own name: `English`, `Español`. */
function languageName(tag: string): string {
  const name = new Intl.DisplayNames([tag], { type: 'language' }).of(tag) ?? tag;
  return name.slice(0, 1).toLocaleUpperCase(tag) + name.slice(1);
}

/** The program's languages by their own names, English and those with a catalogue: a browser would take its time. */
function languageNames(): Record<string, string> {
  const catalogues = readdirSync(new URL('src/language/catalogues', import.meta.url));
  const tags = ['en', ...catalogues.map((file) => file.replace(/\.json$/, '')).sort()];
  return Object.fromEntries(tags.map((tag) => [tag, languageName(tag)]));
}

/** Everything that the build writes; addresses of other hosts are not in it, as the page asks for none. */
const WHOLE_SITE = '**/*.{js,css,html,woff2,csv,svg,png}';

/**
 * Makes the built site installable, and writes the service worker that keeps all of it after the first visit. All
 * addresses are relative. A new worker waits until the page lets it take over or no page is open: see
 * `src/ui/app/offline/versions.ts`, which registers it.
 */
function offline(): Plugin[] {
  return VitePWA({
    registerType: 'prompt',
    injectRegister: false,
    filename: 'offline.js',
    // They are in the whole site already.
    includeManifestIcons: false,
    manifest: {
      name: 'Raftmargin',
      short_name: 'Raftmargin',
      description: 'What a plant costs, what the beds can carry, and where the answer flips.',
      lang: 'en',
      start_url: './',
      scope: './',
      display: 'standalone',
      theme_color: '#faf6ec',
      background_color: '#faf6ec',
      icons: [
        { src: './icon.svg', sizes: 'any', type: 'image/svg+xml' },
        { src: './icon-192.png', sizes: '192x192', type: 'image/png' },
        { src: './icon-512.png', sizes: '512x512', type: 'image/png' },
        { src: './icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
      ],
    },
    workbox: {
      globPatterns: [WHOLE_SITE],
      // A new version brings only the files whose names changed; those whose names hold no hash are compared.
      dontCacheBustURLsMatching: /^assets\/.*-[\w-]{8}\.\w+$/,
      // Another page of the same host is none of ours, even below our folder.
      navigateFallback: null,
      ignoreURLParametersMatching: [/./],
      cacheId: 'raftmargin',
      // By its name it would also clear the copy of the program in a folder below this one.
      cleanupOutdatedCaches: false,
      // The page of the first visit has the whole site at once, not only from its next start.
      clientsClaim: true,
      inlineWorkboxRuntime: true,
      sourcemap: false,
    },
  });
}

export default defineConfig({
  // Relative addresses: the built site works from any folder of any server.
  base: './',
  publicDir: 'src/ui/site',
  define: { LANGUAGE_NAMES: JSON.stringify(languageNames()) },
  plugins: [solid(), contentSecurityPolicy(), restOfStart(), livePage(), offline()],
  // In parts, as the page's scripts are: the texts of another language load only where they are wanted.
  worker: { format: 'es' },
  build: {
    // A small file written into a style as data: would be refused by the policy.
    assetsInlineLimit: 0,
    // Of a part that loads later only its styles are asked for ahead: a list of the scripts of each, most of which are
    // there already, would be 3 kB of the first load, and the site is on the machine after it.
    modulePreload: {
      resolveDependencies: (_file, parts, { hostType }) =>
        hostType === 'js' ? parts.filter((part) => part.endsWith('.css')) : parts,
    },
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            { name: 'language', test: (id) => LANGUAGE.some((part) => part.test(id)) },
            { name: 'parser', test: (id) => PARSER.some((part) => part.test(id)) },
            { name: 'engine', test: (id) => ENGINE.some((part) => part.test(id)) },
            { name: 'shown', test: (id) => SHOWN.some((part) => part.test(id)) },
            { name: 'start', test: START, includeDependenciesRecursively: true },
            { name: 'first', test: FIRST, includeDependenciesRecursively: true },
          ],
        },
      },
    },
  },
  preview: {
    // A policy in the page does not cover a worker's script: that needs the header.
    headers: { 'Content-Security-Policy': SERVED_POLICY },
  },
  test: {
    // Node unless a file's first line says: // @vitest-environment jsdom
    environment: 'node',
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/browser/**', 'tests/bench/**'],
    allowOnly: false,
    // Room for a slow machine: a test that says nothing of speed is not to fail by it.
    testTimeout: 30_000,
    reporters: ['default', ['json', { outputFile: '.cache/reports/unit.json' }]],
  },
});
