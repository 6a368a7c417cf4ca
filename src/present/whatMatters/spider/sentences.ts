import { wording } from '../../../language/wording';
import type { Decimal } from '../../../core/number';
import type { Lever } from '../../../model/view';
import type { Bend, SpiderLine } from '../../../study/spider';
import { listed, plainly, say, sentences, type Phrase } from '../../text/phrase';
import { spoken, spokenWithUnit } from '../../text/spokenNumber';
import type { Format } from '../../text/numberFormat';
import { inPerCent } from '../../text/inPerCent';
import { subjectPhrase, type TornadoSubject } from '../tornado/sentences';
import { commonTexts } from '../../text/commonTexts';

/** A line whose two sides differ by less than this share of the larger one looks straight. */
const slight = 0.1;

/** The difference between the two sides of a bend as a share of the larger one; 0 where one is unknown. */
function unevenness({ less, more }: Bend): number {
  const larger = less.abs().gt(more.abs()) ? less.abs() : more.abs();
  const share = less.plus(more).abs().dividedBy(larger).toNumber();
  return Number.isNaN(share) ? 0 : share;
}

/** The line that bends most; undefined where none bends. */
function mostBent(lines: readonly SpiderLine[]): (SpiderLine & { readonly bend: Bend }) | undefined {
  const bent = lines.flatMap(({ bend, ...line }) => (bend && unevenness(bend) >= slight ? [{ ...line, bend }] : []));
  return bent.sort((a, b) => unevenness(b.bend) - unevenness(a.bend))[0];
}

/** A change of the result with its sign and unit. */
function moved(change: Decimal, { result }: TornadoSubject, format: Format): string {
  const number = format.signed(change, result.unit);
  return spokenWithUnit(number, result.unit?.text ?? '', number === '+1');
}

/** The effect of each per cent, for the key. */
export function slopeText({ slope }: SpiderLine, { result }: TornadoSubject, format: Format): string {
  return slope.isNaN() ? commonTexts.unknown : format.signed(slope, result.unit);
}

function steepest(subject: TornadoSubject, { lever, slope }: SpiderLine, format: Format): Phrase {
  const each = spoken(slope.abs(), subject.result.unit, format);
  return say`Per cent for per cent, ${subject.nameOf(lever.cell)} moves ${subjectPhrase(subject)} most: ${each} for each per cent, on average over its range.`;
}

function bending(subject: TornadoSubject, lines: readonly SpiderLine[], format: Format): Phrase {
  const bent = mostBent(lines);
  if (bent === undefined) {
    const known = lines.some(({ bend }) => bend !== undefined);
    return known
      ? plainly(wording`The lines run nearly straight: a change up does what the same change down undoes.`)
      : [];
  }
  const {
    lever,
    bend: { change, less, more },
  } = bent;
  const by = inPerCent(format.fixed(change, 1));
  return say`${subject.nameOf(lever.cell)} bends most: ${by} less changes it by ${moved(less, subject, format)}, ${by} more by ${moved(more, subject, format)}.`;
}

/** Names of inputs that have no line, and why. */
function without({ nameOf }: TornadoSubject, atZero: readonly Lever[]): Phrase {
  if (atZero.length === 0) return [];
  const names = listed(atZero.map(({ cell }) => nameOf(cell)));
  return atZero.length === 1
    ? say`${names} is 0 today, so no change is a per cent of that, and there is no line.`
    : say`${names} are 0 today, so no change is a per cent of that, and there is no line.`;
}

function outside({ nameOf }: TornadoSubject, lines: readonly SpiderLine[]): Phrase {
  const names = lines.flatMap(({ lever: { cell, base, range } }) =>
    range !== undefined && (base.lt(range.low) || base.gt(range.high)) ? [nameOf(cell)] : [],
  );
  if (names.length === 0) return [];
  return say`A line shows its range alone, and today’s number lies outside of that for ${listed(names)}.`;
}

/** Describes the lines in words. */
export function spiderSentence(
  subject: TornadoSubject,
  lines: readonly SpiderLine[],
  atZero: readonly Lever[],
  format: Format,
): { readonly main: Phrase; readonly more: Phrase } {
  const first = lines.find(({ slope }) => !slope.isNaN());
  if (first === undefined) {
    return {
      main: say`No change in per cent can be shown for ${subjectPhrase(subject)}.`,
      more: without(subject, atZero),
    };
  }
  return {
    main: steepest(subject, first, format),
    more: sentences(bending(subject, lines, format), outside(subject, lines), without(subject, atZero)),
  };
}
