import { wording } from '../language/wording';
import { placed, problem, type Problem } from '../core/problem';
import { eachInSteps, mapInSteps, within, type Steps } from '../core/steps';
import { checkFormula, type NamedCell } from '../formula/check';
import { namesIn } from '../formula/expression';
import { unknownName } from '../formula/unknownName';
import type { Cell } from './cell';
import type { FormulaReader, Understood } from './formulaReader';
import { ordering } from './graph';
import type { Content } from './content';
import type { Plan } from './model';
import { field, type SheetRow } from './sheet';
import { structureOf } from './structure';

/** The text of a cell in one plan. */
interface Written {
  readonly text: string;
  readonly own: boolean;
  readonly column: string;
}

/** The text that fills a cell in a plan; `column` is the plan's own column, or undefined where the file has none. */
export function writtenIn(row: SheetRow, column: string | undefined): Written {
  const own = column === undefined ? '' : field(row, column);
  if (own !== '' && column !== undefined) return { text: own, own: true, column };
  return { text: field(row, 'formula'), own: false, column: 'formula' };
}

/** Cells whose formulas are checked in one step. */
const cellsPerStep = 5;
/** Times that an unknown name is compared with all others: each takes long in a large model. */
const mostCompared = 40;
/** Unknown names that are told of one formula. */
const mostUnknown = 20;
/** Cells of a circle that are named. */
const mostNamed = 20;

/** The work of checking one plan's formulas in the order in which they compute. */
class PlanBuilder {
  readonly faults: Problem[] = [];
  /** Made at its full length, since an array that is filled out of order is slow to read and to copy. */
  private readonly contents: (Content | undefined)[];
  private written: readonly Written[] = [];
  private understood: readonly Understood[] = [];
  private reads: readonly (readonly number[])[] = [];
  private compared = 0;

  constructor(
    private readonly name: string,
    private readonly cells: readonly Cell[],
    private readonly column: string | undefined,
    private readonly ids: ReadonlyMap<string, number>,
  ) {
    this.contents = cells.map(() => undefined);
  }

  *build(rows: readonly SheetRow[], reader: FormulaReader): Steps<Plan> {
    this.written = rows.map((row) => writtenIn(row, this.column));
    this.understood = this.written.map(({ text }) => reader.read(text));
    this.reads = yield* within(
      0,
      0.2,
      mapInSteps(this.understood, (one) => this.readsOf(one)),
    );
    const { order, cycles } = ordering(this.reads);
    for (const { path, members } of cycles) this.refuseCycle(path, members);
    const fill = (id: number): void => {
      this.contents[id] ??= this.content(id);
    };
    yield* within(0.2, 1, eachInSteps(order, fill, cellsPerStep));
    const contents = this.contents as Content[];
    return { name: this.name, column: this.column, contents, structure: structureOf(contents, order) };
  }

  private readsOf(understood: Understood): number[] {
    if (understood.kind !== 'expression') return [];
    return [...namesIn(understood.expression)].flatMap((name) => this.ids.get(name) ?? []);
  }

  private refuseCycle(path: readonly number[], members: readonly number[]): void {
    const text = this.circle(path);
    const fix = wording`Each needs the next one first; give one of them a number or another formula.`;
    const [first = 0] = path;
    const fault = this.report(first, problem('cycle', wording`formulas in a circle: ${text}. ${fix}`, { text }));
    for (const id of members) {
      this.contents[id] = this.refused(id, fault, id);
      this.reportUnknownNames(id);
    }
  }

  /** A circle in words; of one with very many cells, those at its start and its end. */
  private circle(path: readonly number[]): string {
    const names = [...path, ...path.slice(0, 1)].map((id) => this.cells[id]?.name);
    if (names.length <= mostNamed) return names.join(' → ');
    const half = mostNamed / 2;
    return [...names.slice(0, half), '…', ...names.slice(-half)].join(' → ');
  }

  private report(id: number, fault: Problem): Problem {
    const cell = this.cells[id];
    const there = placed(fault, {
      row: cell?.row ?? 0,
      column: this.written[id]?.column ?? '',
      cell: cell?.name ?? '',
    });
    this.faults.push(there);
    return there;
  }

  private refused(id: number, fault: Problem, cause: number): Content {
    const { own = false, text = '' } = this.written[id] ?? {};
    return { kind: 'void', own, text, fault, cause, reads: this.reads[id] ?? [] };
  }

  private content(id: number): Content {
    const written = this.written[id] as Written;
    const understood = this.understood[id] as Understood;
    if (written.text === '') return this.refused(id, this.report(id, this.blank(id)), id);
    if (understood.kind === 'fault') return this.refused(id, this.report(id, understood.fault), id);
    const { unit, unitFault } = this.cells[id]!;
    if (unit === undefined) return this.refused(id, this.reportUnknownNames(id) ?? unitFault!, id);
    const { text, own } = written;
    if (understood.kind === 'input') return { kind: 'input', own, text, number: understood.number };
    const checked = checkFormula(understood.expression, unit, this);
    if ('code' in checked) return this.unchecked(id, checked);
    return { kind: 'calculated', own, text, gives: checked.kind, node: checked.node, reads: this.reads[id] ?? [] };
  }

  /** The content of a formula that failed its check; a fault of a cell upstream is not reported a second time. */
  private unchecked(id: number, fault: Problem): Content {
    const own = this.reportUnknownNames(id);
    if (fault.code !== 'upstream') {
      const isReported = own !== undefined && fault.code === 'name-unknown';
      return this.refused(id, isReported ? own : this.report(id, fault), id);
    }
    const source = this.contents[this.ids.get(fault.where.text)!];
    if (own !== undefined || source?.kind !== 'void') return this.refused(id, own ?? fault, id);
    return this.refused(id, source.fault, source.cause);
  }

  /**
   * Reports the unknown names in a formula (`mostUnknown` of them), even where it cannot be checked further. Returns
   * the first.
   */
  private reportUnknownNames(id: number): Problem | undefined {
    const understood = this.understood[id];
    if (understood?.kind !== 'expression') return undefined;
    const unknown = [...namesIn(understood.expression)].filter((name) => !this.ids.has(name));
    const told = unknown.slice(0, mostUnknown);
    return told.map((name) => this.report(id, unknownName(name, this.names())))[0];
  }

  private blank(id: number): Problem {
    const text = this.cells[id]?.name ?? '';
    return problem(
      'formula-blank',
      wording`nothing to compute: ${text} is blank in plan ${this.name}. Enter a number or a formula.`,
      { text },
    );
  }

  find(name: string): NamedCell | undefined {
    const id = this.ids.get(name);
    if (id === undefined) return undefined;
    const content = this.contents[id];
    const cell = this.cells[id];
    if (content?.kind === 'calculated') return { cell: id, kind: content.gives, unit: cell?.unit };
    const hasUnit = content?.kind === 'input' || (cell?.unitText ?? '') !== '';
    return { cell: id, kind: 'number', unit: hasUnit ? cell?.unit : undefined };
  }

  /** For the nearest name to an unknown one; of a file with very many of those, only the first are looked at. */
  names(): Iterable<string> {
    this.compared += 1;
    return this.compared > mostCompared ? [] : this.ids.keys();
  }
}

/**
 * Checks one plan: reads its formulas, orders them, and checks each against the cells it names.
 * @param column the plan's column, or undefined for the only plan of a file without plan columns
 */
export function* buildPlan(
  name: string,
  column: string | undefined,
  cells: readonly Cell[],
  rows: readonly SheetRow[],
  ids: ReadonlyMap<string, number>,
  reader: FormulaReader,
): Steps<{ plan: Plan; faults: readonly Problem[] }> {
  const builder = new PlanBuilder(name, cells, column, ids);
  const plan = yield* builder.build(rows, reader);
  return { plan, faults: builder.faults };
}
