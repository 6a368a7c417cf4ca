import { wording } from '../language/wording';
import { describe, type Dimension, type Naming } from '../core/dimension';

const timeKinds = ['s', 'day', 'year'];

/** What a formula's dimension lacks and what it should not have, in words, with a hint where times are mixed. */
export function mismatch(found: Dimension, wanted: Dimension, naming?: Naming): string {
  const wrong = [...new Set([...wanted.keys(), ...found.keys()])].filter(
    (kind) => found.get(kind) !== wanted.get(kind),
  );
  const missing = describePowers(wrong, wanted, naming);
  const extra = describePowers(wrong, found, naming);
  const said = [missing && wording`Missing: ${missing}.`, extra && wording`Extra: ${extra}.`];
  if (wrong.filter((kind) => timeKinds.includes(kind)).length > 1) {
    said.push(
      wording`Clock time, crop time and the year of the books never convert by themselves: multiply by a cell such as weeks a year (week/year).`,
    );
  }
  return said.filter(Boolean).join(' ');
}

function describePowers(kinds: readonly string[], dimension: Dimension, naming?: Naming): string {
  const powers = kinds.flatMap((kind) => {
    const n = dimension.get(kind);
    return n === undefined ? [] : [[kind, n] as const];
  });
  return powers.length === 0 ? '' : describe(new Map(powers), naming);
}
