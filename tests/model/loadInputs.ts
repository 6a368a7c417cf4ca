import type { Content } from '../../src/model/content';
import type { Sections } from '../../src/model/sections';

/** A set of registers with a plan's inputs in place and nothing computed. */
export function loadInputs({ program }: Sections, contents: readonly Content[]): Float64Array {
  const registers = program.registers();
  contents.forEach((content, id) => {
    if (content.kind === 'input') registers[id] = content.number.toNumber();
  });
  return registers;
}
