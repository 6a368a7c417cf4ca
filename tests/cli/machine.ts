import type { Machine } from '../../src/cli/machine';
import { dayNumber } from '../../src/trade/civilDate';

/** A machine with some files, on a fixed day, on which nothing can be written unless a test says how. */
export function machineWith(readFile: Machine['readFile'], more: Partial<Machine> = {}): Machine {
  return {
    program: 'npm run --silent cli --',
    readFile,
    isThere: () => false,
    writeFile: (path) => {
      throw new Error(`nothing can be written here: ${path}`);
    },
    livePage: () => undefined,
    today: () => dayNumber({ year: 2031, month: 3, day: 9 }),
    ...more,
  };
}
