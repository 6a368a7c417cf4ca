import { compileProgram, ProgramWriter } from '../formula/compile';
import { run, type Program } from '../formula/program';
import type { Content } from './content';

/** A plan's formulas as one register program over float64: register n is cell n, and each cell has a section. */
export interface Sections {
  readonly program: Program;
  /** For each cell, where its part of the program starts and ends; both are the same for a cell without a formula. */
  readonly starts: Int32Array;
  readonly ends: Int32Array;
}

/** Compiles a plan's formulas, in the order in which they compute. */
export function compileSections(contents: readonly Content[], order: readonly number[]): Sections {
  const writer = new ProgramWriter(contents.length);
  const starts = new Int32Array(contents.length);
  const ends = new Int32Array(contents.length);
  for (const id of order) {
    const content = contents[id];
    starts[id] = ends[id] = writer.code.length;
    if (content?.kind === 'calculated') ends[id] = writer.formula(content.node, id);
  }
  return { program: compileProgram(writer), starts, ends };
}

/**
 * Computes some cells, in the given order, on a set of registers. Neighbouring sections of the program run in one call.
 */
export function runCells({ program, starts, ends }: Sections, registers: Float64Array, ids: readonly number[]): void {
  for (let i = 0; i < ids.length;) {
    const start = starts[ids[i]!]!;
    let end = ends[ids[i]!]!;
    for (i += 1; i < ids.length && starts[ids[i]!] === end; i += 1) end = ends[ids[i]!]!;
    run(program, registers, start, end);
  }
}
