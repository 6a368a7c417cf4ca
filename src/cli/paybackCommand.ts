import { wording, wordingOf } from '../language/wording';
import { decimal } from '../core/number';
import { finish } from '../core/steps';
import { buildModel } from '../model/buildModel';
import { withNetChange } from '../present/theCase/netChange';
import { yearsOdds, type YearsOdds } from '../present/theCase/years/odds';
import { yearsTexts } from '../present/theCase/years/texts';
import { drawRisk } from '../study/risk';
import { riskModel } from '../study/riskModel';
import { overYears, type OverYears, type Payback } from '../trade/years/overYears';
import type { Arguments } from './arguments';
import { planOption, setOption, type CommandHelp } from './commandHelp';
import { aligned, jsonNumber, shortNumber, type Outcome } from './outcome';
import { paybackAsked, type PaybackAsked } from './paybackAsked';
import type { Session } from './session';
import { mostDraws, seedOption, wholeOption } from './wholeOption';

export const paybackHelp: CommandHelp = {
  name: 'payback',
  takes: 'MODEL.csv',
  summary: wording`what an outlay brings over the years`,
  gives: wording`When the yearly net change between two plans has paid an outlay back, with interest and without, its net present value, annual equivalent and internal rate, and the years one by one. With --draws also how often it pays. Name the outlay by --outlay or by --bought.`,
  options: [
    { name: 'against', value: 'NAME', does: wording`the plan to compare with`, needed: true },
    { name: 'outlay', value: '5000', does: wording`what is paid once, today` },
    { name: 'bought', value: 'NAMES', does: wording`entries in money, with commas; their difference is the outlay` },
    { name: 'years', value: '10', does: wording`how many years are looked at` },
    { name: 'rate', value: '5', does: wording`interest, per cent a year` },
    { name: 'left', value: '0', does: wording`what is still worth something at the end` },
    {
      name: 'draws',
      value: '10000',
      does: wording`how many draws from all ranges the odds are from; left out: no odds`,
    },
    { name: 'seed', value: '1', does: wording`the same seed gives the same draws on any machine` },
    { name: 'outlay-low', value: '4000', does: wording`the least that the outlay may come to, for the odds` },
    { name: 'outlay-high', value: '7000', does: wording`the most that it may come to` },
    planOption,
    setOption,
  ],
  example:
    'payback models/transplant-hire.csv --against "Straight to finishing" --outlay 5000 --years 10 --rate 5 --draws 2000',
};

/** The internal rate is searched to so many digits. */
const rateDigits = 15;

/** How often it pays, and in how many draws that was counted. */
interface Odds extends YearsOdds {
  readonly draws: number;
  readonly seed: number;
}

/** The odds, where draws are asked for and the net change can be drawn. */
function oddsOf(session: Session, { options }: Arguments, found: OverYears, of: PaybackAsked): Odds | undefined {
  const draws = wholeOption(options, 'draws', { least: 1, most: mostDraws });
  const seed = seedOption(options);
  const asked = withNetChange(session.model);
  if (draws === undefined || asked === undefined) return undefined;
  const model = buildModel(asked.sheet);
  const [plan, against] = [session.plan, session.against].map((one) =>
    model.plans.find(({ name }) => name === one?.name),
  );
  if (plan === undefined) return undefined;
  const drawn = riskModel({ model, result: asked.result, plan, against });
  const certain = drawn.inputs.length === 0;
  const { sorted } = finish(drawRisk(drawn, { draws, seed, target: 0 }));
  const unsure = of.range && { range: of.range, seed };
  const odds = yearsOdds({ sorted, certain }, found, of.made, unsure);
  return odds && { ...odds, draws, seed };
}

/** Years until the outlay is paid back: 0 where there is none to pay, null where it is not paid in time. */
function paidAfter(payback: Payback): string | null {
  if (payback.kind === 'not within') return null;
  return payback.kind === 'at once' ? '0' : jsonNumber(payback.years);
}

function oddsDocument({ draws, seed, worth, paidBack }: Odds, { range }: PaybackAsked): Record<string, unknown> {
  return {
    draws,
    seed,
    worth_more: jsonNumber(decimal(worth)),
    paid_back: jsonNumber(decimal(paidBack)),
    outlay_low: jsonNumber(range?.low),
    outlay_high: jsonNumber(range?.high),
  };
}

function document(of: PaybackAsked, found: OverYears | undefined, odds: Odds | undefined): Record<string, unknown> {
  const { asked, made, percent } = of;
  const { internal } = found ?? {};
  return {
    unit: made.currency,
    outlay: jsonNumber(asked.outlay),
    gain: jsonNumber(asked.gain),
    years: asked.years,
    rate: jsonNumber(percent),
    left: jsonNumber(asked.left),
    net_present_value: jsonNumber(found?.netPresentValue),
    annual_equivalent: jsonNumber(found?.annualEquivalent),
    annuity_factor: jsonNumber(found?.annuity),
    simple_payback: found ? paidAfter(found.simple) : null,
    discounted_payback: found ? paidAfter(found.discounted) : null,
    internal_rate:
      internal?.kind === 'one' ? jsonNumber(internal.rate.times(100).toSignificantDigits(rateDigits)) : null,
    internal_rates: internal?.kind ?? null,
    lines: (found?.lines ?? []).map(({ year, what, amount, factor, present, cumulative }) => ({
      year,
      what,
      amount: jsonNumber(amount),
      factor: jsonNumber(factor),
      present: jsonNumber(present),
      cumulative: jsonNumber(cumulative),
    })),
    odds: odds ? oddsDocument(odds, of) : null,
  };
}

const internalWords = {
  one: '',
  none: wordingOf('of an internal rate')`none`,
  several: wording`more than one fits`,
} as const;

function paybackText(payback: Payback): string {
  if (payback.kind === 'not within') return wording`not in these years`;
  return payback.kind === 'at once' ? wording`nothing to pay back` : wording`${shortNumber(payback.years)} years`;
}

function figureLines({ asked, made, percent }: PaybackAsked, found: OverYears | undefined): string[][] {
  const { currency } = made;
  const known = [
    [wording`outlay`, shortNumber(asked.outlay), currency],
    [wording`yearly gain`, shortNumber(asked.gain), `${currency}/year`],
    [wording`years looked at`, String(asked.years), ''],
    [wording`interest`, shortNumber(percent), wording`% a year`],
  ];
  if (found === undefined) return known;
  const { internal } = found;
  const rate = internal.kind === 'one' ? shortNumber(internal.rate.times(100)) : internalWords[internal.kind];
  return [
    ...known,
    [wording`net present value`, shortNumber(found.netPresentValue), currency],
    [wording`annual equivalent`, shortNumber(found.annualEquivalent), `${currency}/year`],
    [wording`payback with interest`, paybackText(found.discounted), ''],
    [wording`payback without`, paybackText(found.simple), ''],
    [wording`internal rate`, rate, internal.kind === 'one' ? wording`% a year` : ''],
  ];
}

function oddsLines({ range, made }: PaybackAsked, odds: Odds): string {
  const percent = (share: number): string => `${shortNumber(decimal(share).times(100))} %`;
  const lines = [
    [wording`worth more than it costs`, percent(odds.worth)],
    [wording`paid back in these years`, percent(odds.paidBack)],
  ];
  const { draws, seed } = odds;
  const [low, high] = [shortNumber(range?.low), `${shortNumber(range?.high)} ${made.currency}`];
  const meaning =
    range === undefined
      ? wording`of ${draws} draws from all ranges, seed ${seed}, the outlay taken as certain`
      : wording`of ${draws} draws from all ranges, seed ${seed}, the outlay drawn from ${low} to ${high}`;
  return `\n${aligned(lines, [1])}${meaning}\n`;
}

function people(of: PaybackAsked, found: OverYears | undefined, odds: Odds | undefined): string {
  const figures = aligned(figureLines(of, found), [1]);
  if (found === undefined) return figures;
  const { heads, whats } = yearsTexts;
  const head = [heads.year, heads.what, heads.amount, heads.factor, heads.present, heads.cumulative];
  const rows = found.lines.map(({ year, what, amount, factor, present, cumulative }) => [
    String(year),
    whats[what],
    ...[amount, factor, present, cumulative].map(shortNumber),
  ]);
  return `${figures}\n${aligned([head, ...rows], [0, 2, 3, 4, 5])}${odds ? oddsLines(of, odds) : ''}`;
}

/** What an outlay brings over the years, where the change between two plans brings the same each year. */
export function paybackCommand(session: Session, given: Arguments): Outcome {
  const of = paybackAsked(session, given);
  const answer = overYears(of.asked);
  const found = 'code' in answer ? undefined : answer;
  const odds = found && oddsOf(session, given, found, of);
  return {
    document: document(of, found, odds),
    table: people(of, found, odds),
    computed: found !== undefined,
    said: found === undefined ? of.unknown : [],
  };
}
