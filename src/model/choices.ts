import { wording } from '../language/wording';
import type { Decimal } from '../core/number';
import { problem, type Problem } from '../core/problem';
import { shortened } from '../core/shortened';
import type { Cell, NamedChoice } from './cell';
import { understand } from './formulaReader';
import type { Plan } from './model';
import { isNumber, readNumber } from './readNumber';

/** Most choices that an entry may have: each of its numbers is compared with all of them. */
const mostChoices = 100;
const pattern = wording`Write a number and its words, as in 1 one-use plug; several are parted by ;.`;

function fault(code: string, message: string, text: string): Problem {
  return problem(code, message, { text });
}

function readChoice(claim: string): NamedChoice | Problem {
  const [, numberText = '', words = ''] = /^(\S+)\s*(.*)$/s.exec(claim) ?? [];
  const number = readNumber(numberText);
  if (!isNumber(number))
    return fault('choices-text', wording`choice not readable: ${shortened(claim)}. ${pattern}`, claim);
  if (words === '') return fault('choices-text', wording`choice without words: ${shortened(claim)}. ${pattern}`, claim);
  return { number, words };
}

/** The fault of a choice whose number or words an earlier choice has. */
function taken({ number, words }: NamedChoice, before: Set<string>, claim: string): Problem | undefined {
  const [asNumber, asWords] = [`number ${number.toString()}`, `words ${words}`];
  if (before.has(asNumber)) {
    return fault(
      'choices-twice',
      wording`number chosen twice: ${shortened(claim)}. Give each choice a number of its own.`,
      claim,
    );
  }
  if (before.has(asWords)) {
    return fault(
      'choices-twice',
      wording`words used twice: ${shortened(claim)}. Give each choice words of its own.`,
      claim,
    );
  }
  before.add(asNumber).add(asWords);
  return undefined;
}

/**
 * The choices that a field names, in its order; none where one of them is at fault.
 * @param text as in `1 one-use plug; 2 reusable plug`
 */
export function readChoices(text: string): { choices: readonly NamedChoice[]; faults: readonly Problem[] } {
  const choices: NamedChoice[] = [];
  const faults: Problem[] = [];
  const before = new Set<string>();
  const claims = text === '' ? [] : text.split(';', mostChoices + 1).map((claim) => claim.trim());
  if (claims.length > mostChoices) {
    const message = wording`too many choices: ${shortened(text)}. An entry may have ${mostChoices}; take some out.`;
    return { choices: [], faults: [fault('choices-many', message, shortened(text))] };
  }
  for (const claim of claims) {
    const choice =
      claim === ''
        ? fault('choices-text', wording`choice left blank: ${shortened(text)}. ${pattern}`, text)
        : readChoice(claim);
    const wrong = 'code' in choice ? choice : taken(choice, before, claim);
    if (wrong !== undefined) faults.push(wrong);
    else choices.push(choice as NamedChoice);
  }
  return { choices: faults.length === 0 ? choices : [], faults };
}

/** What a number of an input is called; undefined where it has no choices, or the number is none of them. */
export function wordsOf({ choices }: Pick<Cell, 'choices'>, number: Decimal): string | undefined {
  return choices.find((choice) => choice.number.eq(number))?.words;
}

/** Why an input with choices cannot take a number, or undefined where it can. @param text the number as written */
export function refusedChoice(cell: Pick<Cell, 'choices'>, number: Decimal, text: string): Problem | undefined {
  if (cell.choices.length === 0 || wordsOf(cell, number) !== undefined) return undefined;
  const offered = cell.choices.map((choice) => `${choice.number.toString()} ${choice.words}`).join('; ');
  return fault('choices-value', wording`value that is no choice: ${text}. Take one of ${offered}.`, text);
}

/** What is wrong with the range of an input that has choices: it must lead from one of them to another. */
export function choiceRangeFault({ choices, range }: Pick<Cell, 'choices' | 'range'>): Problem | undefined {
  if (choices.length === 0 || range === undefined) return undefined;
  const ends = [range.low, range.high];
  if (range.shape === 'either' && ends.every((end) => wordsOf({ choices }, end) !== undefined)) return undefined;
  const text = wording`${range.low.toString()} to ${range.high.toString()}`;
  const fix = wording`Take the range out, or give two of the choices and the shape either.`;
  return fault('choices-range', wording`range of an entry with choices: ${text}. ${fix}`, text);
}

/**
 * What is wrong between a cell's choices and its numbers: the shared one and each plan's own. A faulty formula is
 * reported elsewhere.
 */
export function choiceFaultsOf(cell: Cell, shared: string, plans: readonly Plan[]): Problem[] {
  if (cell.choices.length === 0) return [];
  const { id, row, name } = cell;
  const understood = shared === '' ? undefined : understand(shared);
  const own = plans.flatMap(({ column, contents }) => {
    const content = contents[id];
    return content?.kind === 'input' && content.own ? { ...content, column: column ?? '' } : [];
  });
  const inputs =
    understood?.kind === 'input' ? [{ number: understood.number, text: shared, column: 'formula' }, ...own] : own;
  if (inputs.length === 0 && understood?.kind === 'expression') {
    const message = wording`choices on a calculated entry: ${name}. Give choices to the inputs that it is made from.`;
    return [problem('choices-calculated', message, { row, column: 'choices', cell: name, text: shared })];
  }
  return inputs.flatMap(({ number, text, column }) => {
    const refused = refusedChoice(cell, number, text);
    return refused === undefined ? [] : { ...refused, where: { row, column, cell: name, text } };
  });
}
