import type { Problem } from '../../core/problem';
import { buildModel } from '../buildModel';
import type { Cell } from '../cell';
import type { Content } from '../content';
import type { Edited } from '../edit';
import type { Line, Model, Plan } from '../model';
import { field, type Sheet, type SheetRow } from '../sheet';
import { renamed } from './rename';
import { standingName } from './standingName';

function cellsNamed(cells: readonly Cell[], row: number, old: string, name: string, label: string): Cell[] {
  return cells.map((cell) => {
    if (cell.row === row) return { ...cell, name, label: label || name.replaceAll('_', ' ') };
    if (!cell.correlations.some(({ other }) => other === old)) return cell;
    const correlations = cell.correlations.map((one) => (one.other === old ? { ...one, other: name } : one));
    return { ...cell, correlations };
  });
}

function contentNamed(content: Content, old: string, standingOld: RegExp, name: string): Content {
  if (!content.text.includes(old)) return content;
  const text = content.text.replaceAll(standingOld, name);
  return text === content.text ? content : { ...content, text };
}

function planNamed(plan: Plan, old: string, name: string): Plan {
  const pattern = standingName(old);
  return { ...plan, contents: plan.contents.map((content) => contentNamed(content, old, pattern, name)) };
}

/** Lines of text as the sheet has them now: figures in them follow a name too. */
function linesNamed(lines: readonly Line[], { rows }: Sheet): Line[] {
  const byRow = new Map(rows.map((row) => [row.row, row]));
  const told = (line: Extract<Line, { kind: 'text' }>, row: SheetRow | undefined): Line => {
    const [label, note] = [field(row!, 'label'), field(row!, 'note')];
    return label === line.label && note === line.note ? line : { ...line, label, note };
  };
  return lines.map((line) => (line.kind === 'text' ? told(line, byRow.get(line.row)) : line));
}

/**
 * A model in which an entry has another name, wherever it stands; or what is wrong with the name. A formula means the
 * same under another name of what it reads, so nothing is checked or computed again; only a model with faults is
 * checked anew, as their messages have names in them.
 */
export function renamedModel(model: Model, row: number, name: string): Edited | Problem {
  const sheet = renamed(model.sheet, row, name);
  if ('code' in sheet) return sheet;
  const old = model.cells.find((cell) => cell.row === row)?.name;
  if (old === undefined || model.faults.length + model.notices.length > 0) {
    return { model: buildModel(sheet, model.reading), changed: undefined };
  }
  const label = field(
    sheet.rows.find((one) => one.row === row)!,
    'label',
  );
  const lines = linesNamed(model.lines, sheet);
  const after: Model = {
    ...model,
    sheet,
    cells: cellsNamed(model.cells, row, old, name, label),
    ids: new Map([...model.ids].map(([key, id]) => [key === old ? name : key, id])),
    plans: model.plans.map((plan) => planNamed(plan, old, name)),
    lines,
    title: lines.find((line) => line.kind === 'text')?.label ?? '',
  };
  return { model: after, changed: [] };
}
