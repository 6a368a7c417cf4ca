import type { Whose } from '../../../present/results/planSelection';
import { createMemo, createSignal } from 'solid-js';
import { isCurrency } from '../../../core/unit';
import type { Cell } from '../../../model/cell';
import { reach } from '../../../model/graph';
import type { Model } from '../../../model/model';
import type { ComparedPlans } from '../store/comparedPlans';
import type { ModelStore } from '../store/modelStore';
import type { Choice } from '../screenProps';

/** A choice, with the texts by which the autosave keeps it. */
export interface KeptChoice extends Choice {
  kept(): Record<string, string>;
  restore(kept: Readonly<Record<string, string>>): void;
}

/** The key under which the text of a setting is kept. */
export function keptKey({ key }: { readonly key: string }): string {
  return `setting ${key}`;
}

function isMoneyAYear({ unit }: Cell): boolean {
  const powers = [...(unit?.dimension ?? [])];
  const isRight = ([kind, power]: readonly [string, number]): boolean =>
    kind === 'year' ? power === -1 : isCurrency(kind) && power === 1;
  return powers.length === 2 && powers.every(isRight);
}

/**
 * The result shown until someone chooses: the headline that is money a year and feeds no other such headline; else the
 * first headline that an input with a range moves, the first headline, or any calculated cell.
 */
export function usualResult({ cells, plans }: Model, plan: number): string {
  const headlines = cells.filter((cell) => cell.role === 'headline');
  const money = headlines.filter(isMoneyAYear);
  const feeds = plans[plan]?.structure.feeds ?? [];
  const ranged = cells.flatMap(({ id, range }) => (range === undefined ? [] : id));
  const uncertain = reach(ranged, feeds);
  const last = money.find(({ id }) => {
    const fed = reach([id], feeds);
    return money.every((other) => other.id === id || !fed.has(other.id));
  });
  const calculated = cells.find(({ id }) => plans[plan]?.contents[id]?.kind === 'calculated');
  return (last ?? headlines.find(({ id }) => uncertain.has(id)) ?? headlines[0] ?? calculated)?.name ?? '';
}

/** What a person has chosen to look at. Where the open model lacks it, the usual choice is taken. */
export function createChoice(store: ModelStore, { plan, against }: ComparedPlans): KeptChoice {
  const [texts, setTexts] = createSignal<ReadonlyMap<string, string>>(new Map());
  const set = (key: string, text: string): void => {
    setTexts((before) => new Map(before).set(key, text));
  };
  const known = (key: string): string | undefined => {
    const name = texts().get(key);
    return name !== undefined && store.shape().ids.has(name) ? name : undefined;
  };
  const result = createMemo(() => known('result') ?? usualResult(store.shape(), plan()));
  const input = createMemo(() => known('input'));
  const whose = createMemo<Whose>(() => {
    if (against() === undefined) return 'plan';
    const chosen = texts().get('whose');
    return chosen === 'plan' || chosen === 'against' ? chosen : 'difference';
  });
  return {
    result,
    setResult: (name) => set('result', name),
    input,
    setInput: (name) => set('input', name),
    whose,
    setWhose: (chosen) => set('whose', chosen),
    get: (setting) => setting.read(texts().get(keptKey(setting)) ?? ''),
    set: (setting, value) => set(keptKey(setting), setting.write(value)),
    kept: () => Object.fromEntries(texts()),
    restore: (kept) => setTexts(new Map(Object.entries(kept))),
  };
}
