import { wording } from '../../language/wording';
import { decimal, type Decimal } from '../../core/number';
import { isCurrency } from '../../core/unit';
import type { System } from '../../model/change/measures';
import type { FarmAnswers, FarmQuestion, FigureKey, TimeUnit } from '../../trade/farm/answers';
import type { Format } from '../text/numberFormat';
import { typedNumber } from '../text/typedNumber';
import { figureFault, nurseryTooLong } from './answerFaults';
import { asksOf } from './farmFields';

/** What has been typed and chosen on the page, as it stands there. */
export interface TypedAnswers {
  readonly question: FarmQuestion;
  readonly name: string;
  readonly currency: string;
  readonly system: System | undefined;
  readonly timeUnit: TimeUnit;
  readonly noLimit: boolean;
  /** The text of a figure's field; blank where it was skipped. */
  readonly textOf: (key: FigureKey) => string;
  /** Where a figure comes from that was not typed; blank where it was. */
  readonly sourceOf?: (key: FigureKey) => string;
}

/** What can be used of it, and what is wrong with the rest, by its field. */
export interface ReadFarm {
  readonly answers: FarmAnswers;
  readonly faults: ReadonlyMap<FigureKey | 'currency', string>;
}

function readCurrency(typed: string): { code: string | undefined; fault: string | undefined } {
  const code = typed.trim().toUpperCase();
  if (code === '' || isCurrency(code)) return { code: code || undefined, fault: undefined };
  return { code: undefined, fault: wording`no currency: ${typed.trim()}. Enter its code of three letters, as in EUR.` };
}

/** Understands what was typed. A text that cannot be used counts as skipped, and is told. */
export function readAnswers(typed: TypedAnswers, format: Format): ReadFarm {
  const figures = new Map<FigureKey, Decimal>();
  const sources = new Map<FigureKey, string>();
  const faults = new Map<FigureKey | 'currency', string>();
  for (const { key } of asksOf(typed.question).flatMap(({ fields }) => fields)) {
    const text = typed.textOf(key);
    if (key === 'marketLimit' && typed.noLimit) figures.set(key, decimal(0));
    if (text.trim() === '' || figures.has(key)) continue;
    const source = typed.sourceOf?.(key) ?? '';
    if (source !== '') sources.set(key, source);
    const read = typedNumber(text, format);
    const fault = 'text' in read ? figureFault(key, decimal(read.text), format) : read.message;
    if (fault !== undefined) faults.set(key, fault);
    else if ('text' in read) figures.set(key, decimal(read.text));
  }
  const [today, nursery] = [figures.get('timeToday'), figures.get('nurseryTime')];
  const tooLong = today && nursery && nurseryTooLong(nursery, today, typed.timeUnit, format);
  if (tooLong !== undefined) {
    faults.set('nurseryTime', tooLong);
    figures.delete('nurseryTime');
  }
  const { code, fault } = readCurrency(typed.currency);
  if (fault !== undefined) faults.set('currency', fault);
  const name = typed.name.trim().replace(/\s+/g, ' ') || undefined;
  const { question, system, timeUnit } = typed;
  return { answers: { question, name, currency: code, system, timeUnit, figures, sources }, faults };
}
