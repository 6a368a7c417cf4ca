import { batch, createMemo, type Accessor } from 'solid-js';
import { decimal, type Decimal } from '../../../core/number';
import { ownInterest } from '../../../present/theCase/years/ownInterest';
import { usualPercent, type OutlaySource, type YearsTerms } from '../../../present/theCase/years/terms';
import {
  caseLeftSetting,
  caseRateSetting,
  caseYearsSetting,
  outlayEndSetting,
  outlayEntriesSetting,
  outlaySetting,
  outlaySourceSetting,
} from '../../app/preferences/settings/theCase';
import type { ScreenProps } from '../../app/screenProps';

/** The outlay of a case and the years looked at, kept among the choices for each model by its title. */
export interface YearsSettings {
  readonly terms: () => YearsTerms;
  /** Whether a person has named an outlay, typed or by entries. */
  readonly isGiven: () => boolean;
  readonly setSource: (source: OutlaySource) => void;
  /** Numbers as model files write them. */
  readonly setOutlay: (text: string) => void;
  readonly setEnd: (end: 'low' | 'high', text: string) => void;
  readonly makeCertain: () => void;
  readonly setEntries: (names: readonly string[]) => void;
  readonly setYears: (years: number) => void;
  readonly setRate: (text: string) => void;
  readonly setLeft: (text: string) => void;
  readonly leaveOut: () => void;
}

/** @param plan the plan that is taken */
export function createYearsSettings(
  { choice, store }: Pick<ScreenProps, 'choice' | 'store'>,
  plan: Accessor<number>,
): YearsSettings {
  // Until a person says otherwise, money is worth what the model itself says that it is.
  const usual = createMemo((): Decimal => ownInterest(store.model(), store.values(), plan()) ?? usualPercent);
  const title = (): string => store.shape().title;
  const terms = (): YearsTerms => ({
    source: choice.get(outlaySourceSetting(title())),
    typed: choice.get(outlaySetting(title())),
    entries: choice.get(outlayEntriesSetting(title())),
    low: choice.get(outlayEndSetting('low', title())),
    high: choice.get(outlayEndSetting('high', title())),
    years: choice.get(caseYearsSetting(title())),
    percent: choice.get(caseRateSetting(title())) ?? usual(),
    left: choice.get(caseLeftSetting(title())),
  });
  const isGiven = (): boolean => {
    const { source, typed, entries } = terms();
    return source === 'typed' ? typed !== undefined : entries.length > 0;
  };
  const makeCertain = (): void =>
    batch(() => {
      choice.set(outlayEndSetting('low', title()), undefined);
      choice.set(outlayEndSetting('high', title()), undefined);
    });
  return {
    terms,
    isGiven,
    setSource: (source) => choice.set(outlaySourceSetting(title()), source),
    setOutlay: (text) => choice.set(outlaySetting(title()), decimal(text)),
    setEnd: (end, text) => choice.set(outlayEndSetting(end, title()), decimal(text)),
    makeCertain,
    setEntries: (names) => choice.set(outlayEntriesSetting(title()), names),
    setYears: (years) => choice.set(caseYearsSetting(title()), years),
    setRate: (text) => choice.set(caseRateSetting(title()), decimal(text)),
    setLeft: (text) => choice.set(caseLeftSetting(title()), decimal(text)),
    leaveOut: () =>
      batch(() => {
        choice.set(outlaySetting(title()), undefined);
        choice.set(outlayEntriesSetting(title()), []);
        makeCertain();
      }),
  };
}
