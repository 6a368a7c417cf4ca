import { isCurrency } from '../core/unit';
import type { Cell } from '../model/cell';

/** Which of two results of one kind is the better one. */
export type Better = 'higher' | 'lower';

// Labels are in the language of whoever wrote the model.
const gain =
  /\b(?:margin|profit|gain|surplus|net income|contribution|savings?|saved|margen|márgenes|beneficios?|ganancias?|utilidad(?:es)?|excedente|ingresos? netos?|contribuci[oó]n|ahorr\w*)\b/i;
const cost = /\b(?:costs?|expenses?|outlay|cost[oe]s?|gastos?|desembolsos?)\b/i;

type Named = Pick<Cell, 'label' | 'name' | 'unit' | 'budget'>;

function hasWord({ label, name }: Named, words: RegExp): boolean {
  return words.test(`${label} ${name.replaceAll('_', ' ')}`);
}

function isMoney({ unit }: Named): boolean {
  return [...(unit?.dimension ?? [])].some(([kind, power]) => isCurrency(kind) && power > 0);
}

/** Whether a result is money that someone earns, so that more of it pays. */
export function isGain(result: Named): boolean {
  return result.budget === '' && isMoney(result) && hasWord(result, gain);
}

/**
 * Whether more of a result is better, or less: a return is better higher and a cost lower, by its place in the budget
 * or, for money, by what it is called. Undefined where neither says so.
 */
export function betterWay(result: Named): Better | undefined {
  if (result.budget !== '') return result.budget === 'cost' ? 'lower' : 'higher';
  if (isGain(result)) return 'higher';
  return isMoney(result) && hasWord(result, cost) ? 'lower' : undefined;
}
