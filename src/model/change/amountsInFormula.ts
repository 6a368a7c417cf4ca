import { plain, same } from '../../core/dimension';
import { decimal } from '../../core/number';
import { parts } from '../../core/ratio';
import { parseUnit, type Unit } from '../../core/unit';
import { scan, type Token } from '../../formula/scan';

/** A number in a formula that is money, time or plants rather than a plain number. */
export interface WrittenAmount {
  /** Where it stands, with all that goes when an entry takes its place. */
  readonly from: number;
  readonly to: number;
  readonly number: string;
  readonly unitText: string;
}

const numberBeforeWord = /(?<![\w.])(\d+\.?\d*|\.\d+)\s*(?=[A-Za-z%])/g;
const unitCharacters = /^[A-Za-z_%]+(?:\s*\^\s*-?\d+)?(?:\s*[*/]\s*[A-Za-z_%]+(?:\s*\^\s*-?\d+)?)*/;
const twelveMonths = /^\s*\*\s*12(?!\s*[\w.])/;

/** The longest unit that a text begins with, and how long it is there. */
function unitAt(text: string, nouns: ReadonlySet<string>): { unit: Unit; length: number } | undefined {
  let words = unitCharacters.exec(text)?.[0] ?? '';
  while (words !== '') {
    const unit = parseUnit(words.replaceAll(/\s/g, ''), nouns);
    if (!('code' in unit)) return { unit, length: words.length };
    words = words.replace(/\s*[*/]?\s*[^*/]+$/, '');
  }
  return undefined;
}

/** Whether an amount is 1 however it is measured, as 12 month/year is. */
function isUnity(number: string, { dimension, scale }: Unit): boolean {
  const { over, under } = parts(scale);
  return same(dimension, plain) && decimal(number).times(over).eq(under);
}

/** Numbers with a unit behind them, as in `300 EUR/month * 12`, where no formula may have one. */
function withUnits(text: string, nouns: ReadonlySet<string>, isYearly: boolean): WrittenAmount[] {
  return [...text.matchAll(numberBeforeWord)].flatMap(({ index, 0: whole, 1: number = '' }) => {
    const after = index + whole.length;
    const found = unitAt(text.slice(after), nouns);
    if (found === undefined) return [];
    const end = after + found.length;
    if (isUnity(number, found.unit)) {
      const sign = /\*\s*$/.exec(text.slice(0, index))?.[0].length ?? 0;
      return [{ from: index - sign, to: end, number, unitText: '' }];
    }
    const isMonthly = /\/month\b/.test(found.unit.text) && isYearly;
    const months = isMonthly ? (twelveMonths.exec(text.slice(end))?.[0].length ?? 0) : 0;
    return [{ from: index, to: end + months, number, unitText: found.unit.text }];
  });
}

/** The terms of a sum, each with its marks; none where the formula is more than a sum. */
function termsOfSum(tokens: readonly Token[]): Token[][] {
  const terms: Token[][] = [[]];
  let depth = 0;
  for (const token of tokens) {
    if (token.text === '(') depth += 1;
    if (token.text === ')') depth -= 1;
    const isSign = depth === 0 && ['+', '-'].includes(token.text);
    if (isSign) terms.push([]);
    else terms.at(-1)!.push(token);
  }
  const isMore = tokens.some(({ text }) => ['?', ':', '<', '>', '<=', '>=', '==', '!=', 'and', 'or'].includes(text));
  return isMore ? [] : terms.filter(({ length }) => length > 0);
}

function endOf({ at, text }: Token): number {
  return at + text.length;
}

/** Terms of plain numbers in a sum whose entry has a unit, as 300*12 in `54000 + 300*12`. */
function withoutUnits(text: string, unitText: string): WrittenAmount[] {
  const tokens = scan(text);
  if ('code' in tokens || unitText === '') return [];
  return termsOfSum(tokens).flatMap((term): WrittenAmount[] => {
    const isPlain = term.every((token) => token.kind === 'number' || ['*', '/'].includes(token.text));
    const [first, sign, second, ...more] = term;
    if (!isPlain || first === undefined) return [];
    const isTimesTwelve = sign?.text === '*' && more.length === 0 && [first.text, second?.text].includes('12');
    if (isTimesTwelve && second !== undefined && unitText.endsWith('/year')) {
      const amount = first.text === '12' ? second : first;
      const monthly = unitText.replace(/\/year$/, '/month');
      return [{ from: first.at, to: endOf(second), number: amount.text, unitText: monthly }];
    }
    return [{ from: first.at, to: endOf(first), number: first.text, unitText }];
  });
}

/**
 * Numbers in a formula's text that should be entries of their own, in the order of the text: those with a unit behind
 * them, else plain ones that are terms of a sum. A blank unit: the number is 1 and goes altogether.
 * @param unitText the unit of the entry that the formula fills
 * @param nouns what the model counts
 */
export function amountsInFormula(text: string, unitText: string, nouns: ReadonlySet<string>): WrittenAmount[] {
  const written = withUnits(text, nouns, unitText.endsWith('/year'));
  if (written.length === 0) return withoutUnits(text, unitText);
  const rest = written.reduceRight((left, { from, to }) => `${left.slice(0, from)}z${left.slice(to)}`, text);
  // Where one number has its unit, those beside it in the sum mean the entry's.
  const plainOnes = withoutUnits(rest, unitText).map((amount) => moved(amount, written));
  return [...written, ...plainOnes].toSorted((a, b) => a.from - b.from);
}

/** An amount found in a text in which those before it were shortened to one letter. */
function moved(amount: WrittenAmount, written: readonly WrittenAmount[]): WrittenAmount {
  let by = 0;
  for (const { from, to } of written) if (from - by < amount.from) by += 1 - (to - from);
  return { ...amount, from: amount.from - by, to: amount.to - by };
}
