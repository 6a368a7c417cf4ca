import { createMemo, type Accessor } from 'solid-js';
import { numberToText } from '../../../core/number';
import { keptNumber, zero } from '../../../present/breakeven/range';
import type { Choice } from '../../app/screenProps';
import type { SpreadStyle } from '../../../present/howSure/spreadPicture';
import { drawLimits, keptWhole, seedLimits } from '../../../present/text/wholeNumber';

const usualDraws = 100_000;
const usualSeed = 1;

/** What draws depend on besides the model, kept with the choice. */
export interface RiskSettings {
  readonly draws: Accessor<number>;
  readonly seed: Accessor<number>;
  /** As model files write it. */
  readonly targetText: Accessor<string>;
  readonly target: Accessor<number>;
  readonly style: Accessor<SpreadStyle>;
  setDraws(draws: number): void;
  setSeed(seed: number): void;
  setTarget(text: string): void;
  setStyle(style: SpreadStyle): void;
}

/** @param about the result, and whether a difference is looked at: each has a target of its own */
export function createRiskSettings(choice: Accessor<Choice>, about: Accessor<string>): RiskSettings {
  const targetKey = (): string => `how sure target ${about()}`;
  const target = createMemo(() => keptNumber(choice().setting(targetKey())) ?? zero);
  const draws = createMemo(() => keptWhole(choice().setting('how sure draws'), drawLimits, usualDraws));
  const seed = createMemo(() => keptWhole(choice().setting('how sure seed'), seedLimits, usualSeed));
  return {
    draws,
    seed,
    targetText: () => numberToText(target()),
    target: () => target().toNumber(),
    style: () => (choice().setting('how sure look') === 'curve' ? 'curve' : 'histogram'),
    setDraws: (draws) => choice().setSetting('how sure draws', String(draws)),
    setSeed: (seed) => choice().setSetting('how sure seed', String(seed)),
    setTarget: (text) => choice().setSetting(targetKey(), text),
    setStyle: (style) => choice().setSetting('how sure look', style),
  };
}
