import { wording } from '../language/wording';
import { problem, type Problem } from '../core/problem';
import { isNumberText } from '../core/number';
import { eachInSteps, finish, mapInSteps, within, type Steps } from '../core/steps';
import { nounsOf } from '../core/unit';
import { budgetFaults } from './budgetFaults';
import { buildPlan, writtenIn } from './buildPlan';
import type { Cell } from './cell';
import { choiceFaultsOf } from './choices';
import { correlations } from './correlation';
import { cropFaults, dateFaults } from './cropParts';
import { reportedInSteps, type Findings, type Reading } from './findings';
import { FormulaReader } from './formulaReader';
import type { Line, Model, Plan } from './model';
import { rangeFaultsOf, replacedRanges } from './rangeFaults';
import { nameFault, readCell, RowFaults } from './readCell';
import { field, planOfColumn, type Sheet, type SheetRow } from './sheet';

/** Name of the only plan of a file without plan columns. */
const onlyPlan = 'plan';

interface PlanColumn {
  readonly name: string;
  readonly column: string | undefined;
}

/** The rows of a sheet, by what they are. */
interface Sorted {
  readonly cellRows: readonly SheetRow[];
  readonly lines: readonly Line[];
  readonly ids: ReadonlyMap<string, number>;
  readonly faults: readonly Problem[];
}

function planColumns(sheet: Sheet): { columns: PlanColumn[]; faults: Problem[] } {
  const columns: PlanColumn[] = [];
  const faults: Problem[] = [];
  for (const column of sheet.columns) {
    const name = planOfColumn(column);
    if (name === undefined) continue;
    const twice = columns.some((other) => other.name === name);
    if (name !== '' && !twice) columns.push({ name, column });
    else {
      const message = twice
        ? wording`plan named twice: ${column}. Give each a name of its own.`
        : wording`plan without a name: ${column}. Write plan: and a name.`;
      faults.push(problem('plan-name', message, { row: 1, column, text: column }));
    }
  }
  return { columns: columns.length === 0 ? [{ name: onlyPlan, column: undefined }] : columns, faults };
}

/** The first column of a text row that holds a formula, which would make the row a cell. */
function formulaColumn(row: SheetRow, plans: readonly PlanColumn[]): string | undefined {
  const columns = ['formula', ...plans.flatMap(({ column }) => column ?? [])];
  return columns.find((column) => field(row, column) !== '');
}

class RowSorter {
  readonly cellRows: SheetRow[] = [];
  readonly lines: Line[] = [];
  readonly ids = new Map<string, number>();
  readonly faults: Problem[] = [];
  private group = '';

  constructor(private readonly plans: readonly PlanColumn[]) {}

  add(row: SheetRow): void {
    const name = field(row, 'name');
    const group = field(row, 'group') || this.group;
    if (name === '') this.text(row, group);
    else this.named(row, name, group);
    this.group = group;
  }

  private text(row: SheetRow, group: string): void {
    const column = formulaColumn(row, this.plans);
    if (column !== undefined) {
      const text = field(row, column);
      const message = wording`formula in a row without a name: ${text}. Give the row a name, or take the formula out.`;
      this.faults.push(problem('text-formula', message, { row: row.row, column, text }));
    }
    this.lines.push({ kind: 'text', row: row.row, label: field(row, 'label'), note: field(row, 'note'), group });
  }

  private named(row: SheetRow, name: string, group: string): void {
    const fault = nameFault(name) ?? this.taken(name);
    if (fault === undefined) {
      this.ids.set(name, this.cellRows.length);
      this.lines.push({ kind: 'cell', row: row.row, cell: this.cellRows.length });
      this.cellRows.push(row);
      return;
    }
    this.faults.push({ ...fault, where: { row: row.row, column: 'name', cell: name, text: name } });
    this.lines.push({ kind: 'refused', row: row.row, name, label: field(row, 'label'), group });
  }

  private taken(name: string): Problem | undefined {
    const id = this.ids.get(name);
    if (id === undefined) return undefined;
    const first = this.cellRows[id]?.row ?? 0;
    return problem('name-twice', wording`name used twice: ${name}. Row ${first} has it already; rename one of them.`, {
      text: name,
    });
  }
}

function* sortRows(sheet: Sheet, plans: readonly PlanColumn[]): Steps<Sorted> {
  const sorter = new RowSorter(plans);
  yield* eachInSteps(sheet.rows, (row) => sorter.add(row));
  return sorter;
}

/** The nouns that inputs count, in any plan; they are the count units of the model. */
function* inputNouns(rows: readonly SheetRow[], plans: readonly PlanColumn[]): Steps<Set<string>> {
  const nouns = new Set<string>();
  const isInput = (row: SheetRow): boolean => plans.some(({ column }) => isNumberText(writtenIn(row, column).text));
  yield* eachInSteps(rows, (row) => {
    if (isInput(row)) for (const noun of nounsOf(field(row, 'unit'))) nouns.add(noun);
  });
  return nouns;
}

function* readCells(
  rows: readonly SheetRow[],
  plans: readonly PlanColumn[],
): Steps<{ cells: Cell[]; faults: Problem[] }> {
  const nouns = yield* within(0, 0.3, inputNouns(rows, plans));
  const faults: Problem[] = [];
  const read = (row: SheetRow, id: number): Cell => {
    const rowFaults = new RowFaults(row);
    const cell = readCell(row, id, nouns, rowFaults);
    for (const fault of rowFaults.found) faults.push(fault);
    return cell;
  };
  return { cells: yield* within(0.3, 1, mapInSteps(rows, read)), faults };
}

type BuiltPlan = { readonly plan: Plan; readonly faults: readonly Problem[] };

function* buildPlans(
  columns: readonly PlanColumn[],
  build: (column: PlanColumn) => Steps<BuiltPlan>,
): Steps<BuiltPlan[]> {
  const built: BuiltPlan[] = [];
  for (const [i, column] of columns.entries()) {
    built.push(yield* within(i / columns.length, (i + 1) / columns.length, build(column)));
  }
  return built;
}

/** Checks must be true or false in every plan. */
function checkFaults(cells: readonly Cell[], plans: readonly Plan[]): Problem[] {
  return cells.flatMap((cell) => {
    const contents = plans.map(({ contents: all }) => all[cell.id]);
    const isNumber = contents.some(
      (content) => content?.kind === 'input' || (content?.kind === 'calculated' && content.gives === 'number'),
    );
    if (cell.role !== 'check' || !isNumber) return [];
    const where = { row: cell.row, column: 'role', cell: cell.name, text: cell.role };
    return [
      problem(
        'check-number',
        wording`check that gives a number: ${cell.name}. Compare it with something, as in a > 0.`,
        where,
      ),
    ];
  });
}

/** Faults of numbers: outside their range, no day of the year, or none of their choices. */
function* rangesOf(cells: readonly Cell[], rows: readonly SheetRow[], plans: readonly Plan[]): Steps<Problem[]> {
  const faultsOf = (cell: Cell, i: number): Problem[] => rangeFaultsOf(cell, field(rows[i]!, 'formula'));
  const ranges = yield* within(0, 0.4, mapInSteps(cells, faultsOf));
  const datesOf = (cell: Cell): Problem[] => dateFaults(cell, plans);
  const dates = yield* within(0.4, 0.7, mapInSteps(cells, datesOf));
  const choicesOf = (cell: Cell, i: number): Problem[] => choiceFaultsOf(cell, field(rows[i]!, 'formula'), plans);
  const choices = yield* within(0.7, 1, mapInSteps(cells, choicesOf, 5));
  return [...ranges.flat(), ...dates.flat(), ...choices.flat()];
}

/** Faults that several cells make together. */
function* jointFaults(cells: readonly Cell[], plans: readonly Plan[], ids: Model['ids']): Steps<Problem[]> {
  const finders = [
    () => checkFaults(cells, plans),
    () => cropFaults(cells, plans),
    () => budgetFaults(cells, plans),
    () => correlations(cells, ids).faults,
  ];
  const found = yield* mapInSteps(finders, (find) => find(), 1);
  return found.flat();
}

/**
 * Checks a sheet and makes a model of it. Every fault is reported at once, and cells that do not depend on a faulty one
 * still compute.
 * @param reading what was found while the file was read; it is part of the model's lists
 * @param reader formulas that are parsed already, as parsing takes most of the time
 */
export function* buildModelInSteps(
  sheet: Sheet,
  reading: Reading = { faults: [], notices: [] },
  reader = new FormulaReader(),
): Steps<Model> {
  const { columns, faults: planFaults } = planColumns(sheet);
  const { cellRows, lines, ids, faults: nameFaults } = yield* within(0, 0.1, sortRows(sheet, columns));
  const { cells, faults: fieldFaults } = yield* within(0.1, 0.4, readCells(cellRows, columns));
  const build = ({ name, column }: PlanColumn): Steps<BuiltPlan> =>
    buildPlan(name, column, cells, cellRows, ids, reader);
  const built = yield* within(0.4, 0.95, buildPlans(columns, build));
  const plans = built.map(({ plan }) => plan);
  const findings: Findings = {
    written: [...planFaults, ...nameFaults, ...fieldFaults, ...built.flatMap((one) => one.faults)],
    ranges: yield* within(0.95, 0.97, rangesOf(cells, cellRows, plans)),
    joint: yield* within(0.97, 0.98, jointFaults(cells, plans, ids)),
    replaced: (yield* within(
      0.98,
      0.99,
      mapInSteps(cells, (cell) => replacedRanges(cell, plans)),
    )).flat(),
  };
  const title = lines.find((line) => line.kind === 'text')?.label ?? '';
  const told = yield* within(0.99, 1, reportedInSteps(reading, findings));
  return { sheet, title, cells, ids, lines, plans, reading, findings, ...told };
}

/** The same, run to its end at once. */
export function buildModel(...given: Parameters<typeof buildModelInSteps>): Model {
  return finish(buildModelInSteps(...given));
}
