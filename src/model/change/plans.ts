import { wording } from '../../language/wording';
import { problem, type Problem } from '../../core/problem';
import { withPlanNamed } from '../inText/textParts';
import { planOfColumn, type Sheet, type SheetRow } from '../sheet';
import { isTextRow, withWords } from './textColumns';

const columnOf = (name: string): string => `plan: ${name}`;

/** The sheet's plan columns, in its order. */
export function planColumnsOf({ columns }: Sheet): string[] {
  return columns.filter((column) => planOfColumn(column) !== undefined);
}

/** Why a plan cannot have a name: none, one with a line end, or one that another has; undefined where it can. */
export function planNameFault(sheet: Sheet, name: string, column?: string): Problem | undefined {
  if (name.trim() === '' || /[\r\n]/.test(name)) {
    return problem('plan-name', wording`plan without a name: ${name.trim()}. Give it one, in one line.`, {
      text: name,
    });
  }
  const isTaken = planColumnsOf(sheet).some((one) => one !== column && planOfColumn(one) === name.trim());
  if (!isTaken) return undefined;
  return problem('plan-name', wording`plan named twice: ${name.trim()}. Give each a name of its own.`, { text: name });
}

function withTexts(row: SheetRow, texts: readonly (readonly [string, string])[]): SheetRow {
  return { ...row, fields: new Map([...row.fields, ...texts]) };
}

/** Where a sheet has no plan column, its only plan gets one with nothing in it. */
function withNamedPlans(sheet: Sheet, only: string): Sheet {
  if (planColumnsOf(sheet).length > 0) return sheet;
  return { ...sheet, columns: [...sheet.columns, columnOf(only)] };
}

/**
 * A sheet with one plan more, behind the one that it is a copy of; or what is wrong with its name.
 * @param from the plan's name; a sheet without plan columns calls its only plan so from now on
 */
export function withPlan(given: Sheet, from: string, name: string): Sheet | Problem {
  const sheet = withNamedPlans(given, from);
  const fault = planNameFault(sheet, name);
  if (fault !== undefined) return fault;
  const source = planColumnsOf(sheet).find((column) => planOfColumn(column) === from);
  const at = sheet.columns.indexOf(source ?? planColumnsOf(sheet).at(-1)!);
  const added = columnOf(name.trim());
  const rows = sheet.rows.map((row) => {
    const text = source === undefined ? '' : (row.fields.get(source) ?? '');
    return text === '' ? row : withTexts(row, [[added, text]]);
  });
  return { columns: sheet.columns.toSpliced(at + 1, 0, added), rows };
}

/**
 * A sheet in which a plan has another name, also in figures of texts that tell of it; or what is wrong with the name.
 */
export function withPlanRenamed(given: Sheet, from: string, name: string): Sheet | Problem {
  const sheet = withNamedPlans(given, from);
  const column = planColumnsOf(sheet).find((one) => planOfColumn(one) === from);
  const fault = planNameFault(sheet, name, column);
  if (fault !== undefined) return fault;
  const renamed = columnOf(name.trim());
  if (column === undefined || column === renamed) return given;
  const rows = sheet.rows.map((given) => {
    const row = isTextRow(given) ? withWords(given, (text) => withPlanNamed(text, from, name.trim())) : given;
    if (!row.fields.has(column)) return row;
    const entries = [...row.fields].map(([key, text]) => [key === column ? renamed : key, text] as const);
    return { ...row, fields: new Map(entries) };
  });
  return { columns: sheet.columns.map((one) => (one === column ? renamed : one)), rows };
}

/**
 * A sheet without a plan. The last one that is left keeps its column: entries may be filled by nothing else.
 * A sheet with one plan stays as it is.
 */
export function withoutPlan(sheet: Sheet, name: string): Sheet {
  const columns = planColumnsOf(sheet);
  const column = columns.find((one) => planOfColumn(one) === name);
  if (column === undefined || columns.length < 2) return sheet;
  const rows = sheet.rows.map((row) => {
    if (!row.fields.has(column)) return row;
    return { ...row, fields: new Map([...row.fields].filter(([key]) => key !== column)) };
  });
  return { columns: sheet.columns.filter((one) => one !== column), rows };
}

/** A sheet with a plan one place earlier (−1) or later (1) among the plans; the first is the reference. */
export function withPlanMoved(sheet: Sheet, name: string, by: -1 | 1): Sheet {
  const plans = planColumnsOf(sheet);
  const at = plans.findIndex((one) => planOfColumn(one) === name);
  const [column, other] = [plans[at], plans[at + by]];
  if (column === undefined || other === undefined) return sheet;
  const swapped = sheet.columns.map((one) => (one === column ? other : one === other ? column : one));
  return { ...sheet, columns: swapped };
}
