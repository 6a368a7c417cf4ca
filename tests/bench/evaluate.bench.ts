// One evaluation of all cells of the shipped model in one plan: the register program against a function written by hand
// and against the library's compiled nodes; then exactly. Aims: at most 5 times the function, at least 20 times faster
// than the library, and about 1 ms exactly.
import { loadInputs } from '../model/loadInputs';
import { run } from '../../src/formula/program';
import { evaluatePlan } from '../../src/model/values';
import { libraries, libraryEvaluation } from './asLibrary';
import { computed, readInputs, transplantHire } from './handWritten';
import { measureTogether, printTable } from './measure';
import { cellOf, model, plan } from './shipped';

const { program } = plan.structure.sections();
const registers = loadInputs(plan.structure.sections(), plan.contents);
const byProgram = (): void => {
  run(program, registers, 0, program.code.length);
};

const inputs = readInputs((name) => {
  const content = plan.contents[cellOf(name)];
  if (content?.kind !== 'input') throw new Error(`the function takes ${name} as an input, the model calculates it`);
  return content.number.toNumber();
});
const results = new Float64Array(computed.length);
const byHand = (): void => {
  transplantHire(inputs, results);
};

const byLibrary = libraryEvaluation(libraries.whole, plan, model.cells);
const forNumbers = libraryEvaluation(libraries.forNumbers, plan, model.cells);

/** Stops the bench where another way comes to another number for a calculated cell. */
function compare(way: string, name: string, value: number): void {
  const engine = registers[cellOf(name)]!;
  if (Math.abs(value - engine) <= 1e-12 * Math.max(Math.abs(value), Math.abs(engine))) return;
  throw new Error(`${way} and the engine differ in ${name}: ${value} and ${engine}`);
}

byProgram();
byHand();
const scope = byLibrary();
const calculated = model.cells.filter(({ id }) => plan.contents[id]?.kind === 'calculated');
for (const { name } of calculated) {
  const place = computed.indexOf(name);
  if (place < 0) throw new Error(`the function by hand does not compute ${name}`);
  compare('the function by hand', name, results[place]!);
  compare('the library', name, Number(scope[name]));
}

printTable(
  `One evaluation in float64, ${calculated.length} calculated cells of ${model.cells.length}`,
  measureTogether({
    'a function by hand': byHand,
    'register program': byProgram,
    'mathjs compiled nodes': byLibrary,
    'those of its build for numbers': forNumbers,
    exact: () => evaluatePlan(plan),
  }),
);
