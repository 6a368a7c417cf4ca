import { vi } from 'vitest';
import type { CopyStorage } from '../../../../../src/ui/app/shelf/copies/copyStorage';

// What a page has and a test in Node lacks; the engine of pages in tests has typed arrays of its own kind.
const listeners: [kind: string, heard: () => void][] = [];
vi.stubGlobal('location', { origin: 'http://farm.test' });
vi.stubGlobal('addEventListener', (kind: string, heard: () => void) => listeners.push([kind, heard]));

/** Tells the page that it is left. */
export function leavePage(): void {
  for (const [kind, heard] of listeners) if (kind === 'pagehide') heard();
}

function addressOf(asked: RequestInfo | URL): string {
  return asked instanceof Request ? asked.url : asked.toString();
}

/** A cache in memory, as far as copies use one (Service Workers, W3C, 5.4 Cache). */
export class GivenCache {
  readonly held = new Map<string, Response>();
  /** Called before each writing. */
  before: (address: string) => void = () => undefined;
  readonly storage: CopyStorage = {
    keys: () => Promise.resolve([...this.held.keys()].map((url) => ({ url }) as Request)),
    match: (address) => Promise.resolve(this.held.get(addressOf(address))?.clone()),
    put: (address, response) => {
      this.before(addressOf(address));
      this.held.set(addressOf(address), response);
      return Promise.resolve();
    },
    delete: (address) => Promise.resolve(this.held.delete(addressOf(address))),
  };
  /** The last part of each address. */
  parts(): string[] {
    return [...this.held.keys()].map((address) => address.split('/').at(-1) ?? '').sort();
  }
}
