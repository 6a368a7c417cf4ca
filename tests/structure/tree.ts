import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, posix } from 'node:path';

/** The files that a text imports by relative paths, from the root of its tree, with their endings. */
function targetsOf(path: string, text: string): string[] {
  return [...text.matchAll(/'(\.[^'?]+)/g)]
    .map(([, name = '']) => posix.join(posix.dirname(path), name))
    .map((target) => (/\.[a-z]+$/.test(target) ? target : `${target}.ts`));
}

/**
 * Writes a tree of files into a temporary folder, for as long as `use` takes. Whatever they import is there, empty.
 * @param texts by path from the root of the tree
 */
export async function withTree<T>(texts: ReadonlyMap<string, string>, use: (root: string) => Promise<T>): Promise<T> {
  const root = mkdtempSync(join(tmpdir(), 'tree-'));
  const targets = [...texts].flatMap(([path, text]) => targetsOf(path, text));
  const all = new Map([...targets.map((path) => [path, ''] as const), ...texts]);
  try {
    for (const [path, text] of all) {
      mkdirSync(dirname(join(root, path)), { recursive: true });
      writeFileSync(join(root, path), text);
    }
    return await use(root);
  } finally {
    rmSync(root, { recursive: true });
  }
}
