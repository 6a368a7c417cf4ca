import type { Plugin } from 'vite';
import solid from 'vite-plugin-solid';
import { defineConfig } from 'vitest/config';

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

/** The two fonts of the first page, in Latin letters. */
const FIRST_FONTS = /source-(?:sans-3|serif-4)-latin-wght-normal.*\.woff2$/;

/**
 * Asks for the fonts of the first page together with its scripts: a page that is laid out before they are there moves
 * under the finger when they come.
 */
function earlyFonts(): Plugin {
  return {
    name: 'early-fonts',
    transformIndexHtml: (_html, { bundle = {} }) =>
      Object.keys(bundle)
        .filter((file) => FIRST_FONTS.test(file))
        .map((file) => ({
          tag: 'link',
          attrs: { rel: 'preload', as: 'font', type: 'font/woff2', crossorigin: true, href: `./${file}` },
          injectTo: 'head',
        })),
  };
}

/**
 * What every page needs to read and check a model, packed in one script: cut up by who else asks for which part of it,
 * it would be some 3 kB more.
 */
const ENGINE = [
  /src[\\/](?:core|formula)[\\/]/,
  /src[\\/]model[\\/]\w+\.ts$/,
  /src[\\/]files[\\/](?:csv|table|read|decode|write)\w*\.ts$/,
  /node_modules[\\/](?:mathjs|decimal\.js|papaparse)[\\/]/,
];

export default defineConfig({
  // Relative addresses: the built site works from any folder of any server.
  base: './',
  plugins: [solid(), contentSecurityPolicy(), earlyFonts()],
  build: {
    // A small file written into a style as data: would be refused by the policy.
    assetsInlineLimit: 0,
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [{ name: 'engine', test: (id) => ENGINE.some((part) => part.test(id)) }],
        },
      },
    },
  },
  preview: {
    // A policy in the page does not cover a worker's script: that needs the header.
    headers: { 'Content-Security-Policy': POLICY },
  },
  test: {
    // Node unless a file's first line says: // @vitest-environment jsdom
    environment: 'node',
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/browser/**', 'tests/bench/**'],
    allowOnly: false,
    reporters: ['default', ['json', { outputFile: '.cache/reports/unit.json' }]],
  },
});
