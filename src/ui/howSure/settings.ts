import { createMemo, type Accessor } from 'solid-js';
import { numberToText } from '../../core/number';
import { keptNumber, zero } from '../breakeven/range';
import type { Choice } from '../screen';
import type { Look } from './spreadPicture';
import { drawLimits, keptWhole, seedLimits } from './wholeNumber';

const usualDraws = 100_000;
const usualSeed = 1;

/** What draws depend on besides the model, kept with the choice. */
export interface Settings {
  readonly draws: Accessor<number>;
  readonly seed: Accessor<number>;
  /** As model files write it. */
  readonly targetText: Accessor<string>;
  readonly target: Accessor<number>;
  readonly look: Accessor<Look>;
  setDraws(draws: number): void;
  setSeed(seed: number): void;
  setTarget(text: string): void;
  setLook(look: Look): void;
}

/** @param about the result, and whether a difference is looked at: each has a target of its own */
export function createSettings(choice: Accessor<Choice>, about: Accessor<string>): Settings {
  const targetKey = (): string => `how sure target ${about()}`;
  const target = createMemo(() => keptNumber(choice().setting(targetKey())) ?? zero);
  const draws = createMemo(() => keptWhole(choice().setting('how sure draws'), drawLimits, usualDraws));
  const seed = createMemo(() => keptWhole(choice().setting('how sure seed'), seedLimits, usualSeed));
  return {
    draws,
    seed,
    targetText: () => numberToText(target()),
    target: () => target().toNumber(),
    look: () => (choice().setting('how sure look') === 'curve' ? 'curve' : 'histogram'),
    setDraws: (draws) => choice().setSetting('how sure draws', String(draws)),
    setSeed: (seed) => choice().setSetting('how sure seed', String(seed)),
    setTarget: (text) => choice().setSetting(targetKey(), text),
    setLook: (look) => choice().setSetting('how sure look', look),
  };
}
