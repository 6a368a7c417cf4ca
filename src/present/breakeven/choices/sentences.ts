import { wording } from '../../../language/wording';
import { decimal, type Decimal } from '../../../core/number';
import type { Format } from '../../text/numberFormat';
import { capital, listed, listedPhrases, plainly, say, sentences, type Phrase } from '../../text/phrase';
import { spoken } from '../../text/spokenNumber';
import { ownClaim, type Claim } from '../claim';
import { claimOf, still, subjectOf, todayIs, type BreakevenContext, type BreakevenSentences } from '../sentences';
import type { ChoiceRow } from './rows';

/** What the sentences about an input with named choices are made from. */
export interface ChoicesContext extends Omit<BreakevenContext, 'found'> {
  /** The values of each are those of the plan, and of the plan compared with where there is one. */
  readonly rows: readonly ChoiceRow[];
}

/** At most this many choices are named in a list. */
const mostNames = 6;

const unknown = decimal(NaN);

/** The plan's result less that of the plan compared with; the plan's own where there is none. */
export function leadingOf({ values: [plan = unknown, against] }: ChoiceRow): Decimal {
  return against === undefined ? plan : plan.minus(against);
}

/** The words of the choices on either side of a target, and of those with which there is no result. */
interface Sorted {
  readonly above: readonly string[];
  readonly below: readonly string[];
  readonly unknown: readonly string[];
}

function sorted(rows: readonly ChoiceRow[], of: (row: ChoiceRow) => Decimal, target: Decimal): Sorted {
  const words = (isIn: (value: Decimal) => boolean): string[] =>
    rows.filter((row) => isIn(of(row))).map(({ choice }) => choice.words);
  return {
    above: words((value) => value.gte(target)),
    below: words((value) => value.lt(target)),
    unknown: words((value) => value.isNaN()),
  };
}

/** `with one-use plug and with reusable plug` */
function withEach(words: readonly string[]): Phrase {
  const rest = words.length - mostNames;
  const named = words.slice(0, mostNames).map((each) => say`with ${each}`);
  return listedPhrases(rest > 0 ? [...named, plainly(wording`${rest} more`)] : named);
}

/** With which choices a statement is true, as a sentence. */
function answer({ above, below }: Sorted, claim: Claim, label: string): Phrase {
  if (above.length + below.length === 0) return [];
  if (below.length === 0) return capital(say`${claim.above} ${withEach(above)}.`);
  if (above.length === 0) return say`Whatever ${label} is, ${claim.below}.`;
  return capital(say`${claim.above} ${withEach(above)}, not ${withEach(below)}.`);
}

/** With which choices each plan by itself meets its target. */
function eachPlan({ subject, targets, rows, moved }: ChoicesContext, format: Format): Phrase {
  const { against, plan } = subject;
  if (against === undefined) return [];
  const own = [
    { name: against, at: 1, target: targets.against },
    { name: plan, at: 0, target: targets.plan },
  ].map(({ name, at, target }) => {
    const sides = sorted(rows, ({ values }) => values[at] ?? unknown, target);
    return { sides, claim: ownClaim({ ...subject, target, plan: name, against }, format) };
  });
  // It is not worth saying that a cost or a number of plants stays above 0.
  if (targets.plan.isZero() && own.every(({ sides }) => sides.below.length === 0)) return [];
  return sentences(...own.map(({ sides, claim }) => answer(sides, claim, moved.cell.label)));
}

function today(matter: ChoicesContext, base: Decimal, format: Format): Phrase {
  const words = matter.rows.find(({ isToday }) => isToday)?.choice.words;
  if (words === undefined) return todayIs(matter, base, format);
  return say`Today, with ${words}, ${subjectOf(matter)} is ${spoken(base, matter.subject.result.unit, format)}.`;
}

/** With which choices of an input the answer holds, in words. */
export function choiceSentences(matter: ChoicesContext, format: Format): BreakevenSentences {
  const { view, lines, targets, rows, moved } = matter;
  const leading = view === 'alone' ? 'plan' : 'difference';
  const line = lines[leading];
  if (line === undefined) return { main: [], more: [] };
  const sides = sorted(rows, leadingOf, targets[leading]);
  if (sides.unknown.length === rows.length) {
    return {
      main: capital(say`${subjectOf(matter)} cannot be computed with any choice of ${moved.cell.label}.`),
      more: [],
    };
  }
  if (rows.every((row) => leadingOf(row).eq(line.base))) return still(matter, line.base, format);
  return {
    main: answer(sides, claimOf(matter, format), moved.cell.label),
    more: sentences(
      today(matter, line.base, format),
      sides.unknown.length === 0 ? [] : say`It cannot be computed with ${listed(sides.unknown, mostNames)}.`,
      view === 'both' ? eachPlan(matter, format) : [],
    ),
  };
}
