import type { Decimal } from '../core/number';
import type { Problem } from '../core/problem';
import { eachInSteps, type Steps } from '../core/steps';
import type { Expression } from '../formula/expression';
import { parse } from '../formula/parse';
import { isNumber, isWrittenNumber, readNumber } from './readNumber';
import { field, planOfColumn, type Sheet, type SheetRow } from './sheet';

/** What the text of a formula is by itself, before names and units are checked. */
export type Understood =
  | { readonly kind: 'input'; readonly number: Decimal }
  | { readonly kind: 'expression'; readonly expression: Expression }
  | { readonly kind: 'fault'; readonly fault: Problem };

/** Parses a text where a number or a formula may stand. */
export function understand(text: string): Understood {
  if (isWrittenNumber(text)) {
    const number = readNumber(text);
    return isNumber(number) ? { kind: 'input', number } : { kind: 'fault', fault: number };
  }
  const expression = parse(text);
  return 'code' in expression ? { kind: 'fault', fault: expression } : { kind: 'expression', expression };
}

/** Parses the texts of formulas, each distinct one once. */
export class FormulaReader {
  private readonly known = new Map<string, Understood>();

  read(text: string): Understood {
    const before = this.known.get(text);
    if (before !== undefined) return before;
    const understood = understand(text);
    this.known.set(text, understood);
    return understood;
  }
}

/** Rows whose formulas are parsed in one step. */
const rowsPerStep = 5;

/** Parses all formulas of a sheet in steps. */
export function* readAhead({ columns, rows }: Sheet, reader: FormulaReader): Steps<void> {
  const formulas = columns.filter((column) => column === 'formula' || planOfColumn(column) !== undefined);
  const read = (row: SheetRow): void => {
    for (const column of formulas) reader.read(field(row, column));
  };
  yield* eachInSteps(rows, read, rowsPerStep);
}
