import { cpSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.csv': 'text/csv',
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
};

/** A built site below a folder of a host, as a person who copied it there has it. */
export interface Site {
  readonly address: string;
  /** Serves the files of another folder from now on, under the same address. */
  readonly serve: (folder: string) => void;
  /** Breaks every connection off, as if the host were gone. */
  readonly turnOff: () => void;
  /** Paths asked for so far that are no file of the site. */
  readonly missing: () => readonly string[];
  readonly close: () => Promise<void>;
}

/** The policy that the page sets itself, which the host sends for workers too. */
function policyOf(folder: string): string {
  const page = readFileSync(join(folder, 'index.html'), 'utf8');
  return /content="(default-src[^"]+)"/.exec(page)![1]!.replaceAll('&#39;', "'");
}

export async function openSite(first: string, below = '/farm/tools/'): Promise<Site> {
  let [folder, isOff] = [first, false];
  const missing: string[] = [];
  const server = createServer((request, response) => {
    if (isOff) return void request.socket.destroy();
    const { pathname } = new URL(request.url ?? '/', 'http://site');
    const file = pathname === below ? 'index.html' : pathname.slice(below.length);
    try {
      const body = readFileSync(join(folder, file));
      const type = types[extname(file)] ?? 'text/plain';
      response.writeHead(200, { 'content-type': type, 'content-security-policy': policyOf(folder) }).end(body);
    } catch {
      missing.push(pathname);
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}${below}`,
    serve: (other) => {
      folder = other;
    },
    turnOff: () => {
      isOff = true;
      server.closeAllConnections();
    },
    missing: () => missing,
    close: async () => {
      server.closeAllConnections();
      await new Promise((closed) => server.close(closed));
    },
  };
}

/** The letters and figures that the build puts into the name of each part, from what is in the part. */
const hash = /(?<=-)[\w-]{8}(?=\.\w+$)/;

/**
 * Copies a built site and makes a later version of it: each part has another name, none of the old ones is left, and
 * the page says in its root's `data-build` that it is another.
 */
export function buildLater(from: string, to: string): void {
  cpSync(from, to, { recursive: true });
  const parts = readdirSync(join(to, 'assets'));
  const renamed = parts.map(
    (name) => [name, name.replace(hash, (text) => `${text.slice(4)}${text.slice(0, 4)}`)] as const,
  );
  for (const [name, later] of renamed) renameSync(join(to, 'assets', name), join(to, 'assets', later));
  const texts = [...renamed.map(([, later]) => join('assets', later)), 'index.html', 'offline.js'];
  for (const file of texts.filter((name) => /\.(?:js|css|html)$/.test(name))) {
    const text = renamed.reduce(
      (before, [name, later]) => before.replaceAll(name, later),
      readFileSync(join(to, file), 'utf8'),
    );
    const marked = text
      .replace('<html lang="en">', '<html lang="en" data-build="later">')
      .replace(/(url:"index\.html",revision:")\w{4}/, '$1beef');
    writeFileSync(join(to, file), marked);
  }
}
