import { defineConfig } from 'vite';
import { languages, livePage } from './vite.live.config.ts';

/** The command line as one script for Node, beside the page into which it puts a case. */
export default defineConfig({
  publicDir: false,
  plugins: [livePage(), languages()],
  build: {
    ssr: 'src/cli/main.ts',
    outDir: 'command',
    target: 'node20',
    rolldownOptions: {
      output: {
        entryFileNames: 'raftmargin.js',
        chunkFileNames: '[name].js',
        banner: ({ isEntry }) => (isEntry ? '#!/usr/bin/env node' : ''),
      },
    },
  },
});
