import { wording } from '../../language/wording';
import { functionHelp, type FunctionHelp } from './functionHelp';
import { operatorHelp, type OperatorHelp } from './operatorHelp';
import { refusedHelp, type RefusedHelp } from './refusedHelp';
import { unitHelp, type UnitKind } from './unitHelp';

/** A part of the help: a heading, remarks that hold for all of it, and its entries. */
interface Part<T> {
  readonly heading: string;
  readonly intro: string;
  readonly entries: readonly T[];
}

/** All there is to know for writing a formula. */
export interface FormulaHelp {
  readonly functions: Part<FunctionHelp>;
  readonly operators: Part<OperatorHelp>;
  readonly units: Part<UnitKind>;
  readonly refused: Part<RefusedHelp>;
}

/** The whole help, from the records by which formulas are read; every example in it is computed. */
export function formulaHelp(): FormulaHelp {
  return {
    functions: {
      heading: wording`Functions`,
      intro: wording`Write the name, then the values in brackets with commas between them.`,
      entries: functionHelp(),
    },
    operators: {
      heading: wording`Signs`,
      intro: wording`Each has its order: 1 is done first; of one order, the left comes first.`,
      entries: operatorHelp(),
    },
    units: {
      heading: wording`Units`,
      intro: wording`Join names by * and /, each with a whole power where wanted: EUR/m^2/year. A formula holds no units and no factors between them: the entries that it names carry theirs, and the result is converted to its own.`,
      entries: unitHelp(),
    },
    refused: {
      heading: wording`Not in a formula`,
      intro: wording`Each of these is refused before anything is computed, with the reason at the entry.`,
      entries: refusedHelp(),
    },
  };
}
