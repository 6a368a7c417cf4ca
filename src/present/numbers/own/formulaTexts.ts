import { wording } from '../../../language/wording';
import type { Cell } from '../../../model/cell';
import { givenBy } from '../../../formula/given';
import { planOfFormula, scopeOf } from '../../../model/change/formulaScope';
import { formulaRepairs, type FormulaRepair } from '../../../model/change/formulaRepairs';
import type { OwnNumbers } from '../../../model/change/ownNumbers';
import { understand } from '../../../model/formulaReader';
import type { Model } from '../../../model/model';
import { listed, say, textOf, type Phrase } from '../../text/phrase';
import { printedUnit } from '../../text/printedUnit';

/** What stands below a formula while it is typed. */
export const formulaTexts = {
  gives: (unit: string) => wording`Gives ${unit}.`,
  givesNumber: wording`Gives a plain number.`,
  givesTruth: wording`Gives true or false.`,
  isNumber: (unit: string) => wording`A number in ${unit}.`,
  isPlainNumber: wording`A plain number.`,
  /** Heard where names are offered. */
  offered: (count: number) =>
    count === 1
      ? wording`One name fits. Arrow keys choose it, Enter takes it.`
      : wording`${count} names fit. Arrow keys choose, Enter takes one.`,
  names: wording`Names that fit`,
  write: (text: string) => wording`Write ${text}`,
  use: (name: string) => wording`Use ${name}`,
  partLabel: (label: string, number: number, of: number) =>
    of === 1 ? wording`${label}, amount` : wording`${label}, part ${number}`,
} as const;

/** What a formula gives, in words; undefined where its names, signs or units do not go together yet. */
export function givenText(model: Model, cell: Cell, column: string, typed: string): string | undefined {
  const understood = understand(typed.trim());
  if (understood.kind === 'fault') return undefined;
  if (understood.kind === 'input') {
    const unit = printedUnit(cell.unitText);
    return unit === '' ? formulaTexts.isPlainNumber : formulaTexts.isNumber(unit);
  }
  const given = givenBy(understood.expression, scopeOf(model, planOfFormula(model, column)));
  if ('code' in given) return undefined;
  if (given.kind === 'truth') return formulaTexts.givesTruth;
  return given.unitText === '' ? formulaTexts.givesNumber : formulaTexts.gives(printedUnit(given.unitText));
}

/** A repair with the words of its button. */
export interface RepairOffer extends FormulaRepair {
  readonly words: string;
}

/** What would mend a formula by its text, each to be pressed. */
export function repairOffers(model: Model, cell: Cell, column: string, typed: string): RepairOffer[] {
  return formulaRepairs(model, cell, column, typed).map((repair) => ({
    ...repair,
    words: repair.name === undefined ? formulaTexts.write(repair.text) : formulaTexts.use(repair.name),
  }));
}

/** The words of the button that makes numbers entries of their own. */
export function ownNumbersText({ numbers }: Pick<OwnNumbers, 'numbers'>): string {
  const [only] = numbers;
  return numbers.length === 1
    ? wording`Make ${only ?? ''} an entry of its own`
    : wording`Make ${textOf(listed(numbers))} entries of their own`;
}

/** What was done then. @param label of the entry whose formula it is */
export function ownNumbersSaid({ numbers }: Pick<OwnNumbers, 'numbers'>, label: string): Phrase {
  return numbers.length === 1
    ? say`${listed(numbers)} is an entry of its own now, below ${label}, which is made from it.`
    : say`${listed(numbers)} are entries of their own now, below ${label}, which is made from them.`;
}
