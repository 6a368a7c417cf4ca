import { createMemo, type Accessor } from 'solid-js';
import { decimal, numberToText, type Decimal } from '../../../core/number';
import {
  drawsSetting,
  oddsTargetSetting,
  seedSetting,
  spreadStyleSetting,
} from '../../app/preferences/settings/howSure';
import type { Setting } from '../../app/preferences/settings/setting';
import type { Choice } from '../../app/screenProps';
import type { SpreadStyle } from '../../../present/howSure/spreadPicture';

/** The settings of draws, kept among the choices. */
export interface RiskSettings {
  readonly draws: Accessor<number>;
  readonly seed: Accessor<number>;
  /** The target as model files write it. */
  readonly targetText: Accessor<string>;
  readonly target: Accessor<number>;
  readonly style: Accessor<SpreadStyle>;
  setDraws(draws: number): void;
  setSeed(seed: number): void;
  setTarget(text: string): void;
  setStyle(style: SpreadStyle): void;
}

/** @param about the result, and whether a difference is looked at; each has its own target */
export function createRiskSettings(choice: Accessor<Choice>, about: Accessor<string>): RiskSettings {
  const targetSetting = (): Setting<Decimal> => oddsTargetSetting(about());
  const target = createMemo(() => choice().get(targetSetting()));
  const draws = createMemo(() => choice().get(drawsSetting));
  const seed = createMemo(() => choice().get(seedSetting));
  return {
    draws,
    seed,
    targetText: () => numberToText(target()),
    target: () => target().toNumber(),
    style: () => choice().get(spreadStyleSetting),
    setDraws: (draws) => choice().set(drawsSetting, draws),
    setSeed: (seed) => choice().set(seedSetting, seed),
    setTarget: (text) => choice().set(targetSetting(), decimal(text)),
    setStyle: (style) => choice().set(spreadStyleSetting, style),
  };
}
