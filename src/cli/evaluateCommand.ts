import { wording } from '../language/wording';
import type { Decimal } from '../core/number';
import type { Cell } from '../model/cell';
import { wordsOf } from '../model/choices';
import { givesTruth } from '../model/model';
import { errorSentence, type CellError } from '../model/values';
import { modelOptions, type CommandHelp } from './commandHelp';
import { aligned, jsonNumber, shortNumber, type Outcome } from './outcome';
import type { Session } from './session';

export const evaluateHelp: CommandHelp = {
  name: 'evaluate',
  takes: 'MODEL.csv',
  summary: wording`every entry of a plan`,
  gives: wording`Every entry with its value and unit, or with what keeps it from being computed, and whether each check holds.`,
  options: modelOptions,
  example: 'evaluate models/transplant-hire.csv',
};

/** A cell's value for a document: a number's text, true or false, or null beside an error. */
type CellValue = string | boolean | null;

/** The value looked at: the plan's own, or how far it stands above the plan it is compared with. */
function numberOf({ values, againstValues }: Session, { id }: Cell): Decimal | undefined {
  const own = values.numbers[id];
  const other = againstValues?.numbers[id];
  return other === undefined ? own : own?.minus(other);
}

function errorOf({ values, againstValues }: Session, { id }: Cell): CellError | undefined {
  return values.errors.get(id) ?? againstValues?.errors.get(id);
}

function valueOf(session: Session, cell: Cell): CellValue {
  if (errorOf(session, cell) !== undefined) return null;
  return givesTruth(session.plan, cell.id)
    ? session.values.numbers[cell.id]?.eq(1) === true
    : jsonNumber(numberOf(session, cell));
}

function cellDocument(session: Session, cell: Cell): Record<string, unknown> {
  const error = errorOf(session, cell);
  const said = error && {
    code: error.code,
    message: error.message,
    cause: session.model.cells[error.cause]?.name ?? '',
  };
  return { value: valueOf(session, cell), unit: cell.unitText, error: said ?? null };
}

/** What follows a number: its unit, and the words of a choice unless it is a difference. */
function besideNumber({ values, against }: Session, cell: Cell): string {
  const number = values.numbers[cell.id];
  const words = against === undefined && number !== undefined ? wordsOf(cell, number) : undefined;
  return [cell.unitText, words].filter(Boolean).join(', ');
}

const truthTexts = { true: wording`true`, false: wording`false` } as const;

function cellLine(session: Session, cell: Cell): string[] {
  const error = errorOf(session, cell);
  if (error !== undefined) return [cell.name, '—', '', errorSentence(error, cell.id, session.model.cells)];
  const value = valueOf(session, cell);
  const shown = typeof value === 'boolean' ? truthTexts[`${value}`] : shortNumber(numberOf(session, cell));
  const isHeldCheck = cell.role === 'check' && value === true;
  return [cell.name, shown, besideNumber(session, cell), isHeldCheck ? wording`holds` : cell.label];
}

/** Every cell of a plan, or of the difference of two; true and false are the plan's own. */
export function evaluateCommand(session: Session): Outcome {
  const { model, plan, against } = session;
  const cells = new Map(model.cells.map((cell) => [cell.name, cellDocument(session, cell)]));
  const checks = model.cells
    .filter(({ role }) => role === 'check')
    .map((cell) => ({ name: cell.name, holds: givesTruth(session.plan, cell.id) ? valueOf(session, cell) : null }));
  const compared = against === undefined ? {} : { against: against.name };
  return {
    document: { plan: plan.name, ...compared, cells: Object.fromEntries(cells), checks },
    table: aligned(
      model.cells.map((cell) => cellLine(session, cell)),
      [1],
    ),
    computed: model.cells.every((cell) => errorOf(session, cell) === undefined),
  };
}
