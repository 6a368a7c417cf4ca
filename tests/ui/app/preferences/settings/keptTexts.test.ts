import { describe, expect, it } from 'vitest';
import { decimal } from '../../../../../src/core/number';
import { createChoice, type KeptChoice } from '../../../../../src/ui/app/preferences/choice';
import * as beds from '../../../../../src/ui/app/preferences/settings/beds';
import * as bestWeeks from '../../../../../src/ui/app/preferences/settings/bestWeeks';
import * as breakeven from '../../../../../src/ui/app/preferences/settings/breakeven';
import * as howSure from '../../../../../src/ui/app/preferences/settings/howSure';
import * as lesson from '../../../../../src/ui/app/preferences/settings/lesson';
import * as page from '../../../../../src/ui/app/preferences/settings/page';
import * as setUp from '../../../../../src/ui/app/preferences/settings/setUp';
import type { Setting } from '../../../../../src/ui/app/preferences/settings/setting';
import * as plans from '../../../../../src/ui/app/preferences/settings/plans';
import * as theCase from '../../../../../src/ui/app/preferences/settings/theCase';
import * as together from '../../../../../src/ui/app/preferences/settings/together';
import * as takeOut from '../../../../../src/ui/app/preferences/settings/takeOut';
import * as timing from '../../../../../src/ui/app/preferences/settings/timing';
import * as whatMatters from '../../../../../src/ui/app/preferences/settings/whatMatters';
import { createModelStore } from '../../../../../src/ui/app/store/modelStore';
import { nursery } from '../../../../present/nursery';

const all = {
  ...beds,
  ...bestWeeks,
  ...breakeven,
  ...howSure,
  ...lesson,
  ...page,
  ...plans,
  ...setUp,
  ...takeOut,
  ...theCase,
  ...timing,
  ...together,
  ...whatMatters,
};

function keptChoice(): KeptChoice {
  const { model, origin } = nursery();
  return createChoice(createModelStore(model, origin), { plan: () => 0, against: () => undefined } as never);
}

/** What an autosave of the first version of these keys holds, what it means, and what stands without it. */
type Case = [
  name: keyof typeof all,
  setting: Setting<unknown>,
  key: string,
  kept: string,
  value: unknown,
  usual: unknown,
];

/** 9 March 2031: 61 years of 365 days after 1970, 15 leap days, 31 + 28 + 8 days. */
const march = 61 * 365 + 15 + 67;
const since = 1_931_590_862_000;

const cases: Case[] = [
  ['questionSetting', page.questionSetting, 'question', 'how sure', 'how sure', 'numbers'],
  ['sideSetting', page.sideSetting, 'side', 'the case', 'the case', 'what matters'],
  ['planSetting', page.planSetting, 'plan', 'With a hire', 'With a hire', ''],
  ['againstSetting', page.againstSetting, 'against', 'Today', 'Today', ''],
  ['methodFromSetting', page.methodFromSetting, 'method from', 'beds', 'beds', 'numbers'],
  ['methodEntrySetting', page.methodEntrySetting, 'method entry', 'whole boards', 'whole boards', ''],
  ['togetherEntrySetting', page.togetherEntrySetting, 'together entry', 'margin', 'margin', ''],

  ['reachSetting', together.reachSetting, 'together reach', 'all', 'all', '1'],
  ['directionSetting', together.directionSetting, 'together direction', 'down', 'down', 'across'],

  [
    'planFormSetting',
    plans.planFormSetting,
    'plans form',
    '["copy","Today","With a hire",""]',
    { does: 'copy', plan: 'Today', name: 'With a hire', first: '' },
    undefined,
  ],

  ['takenDigitsSetting', takeOut.takenDigitsSetting, 'take out digits', 'all', 'all', 'shown'],

  ['drawsSetting', howSure.drawsSetting, 'how sure draws', '20000', 20_000, 100_000],
  ['seedSetting', howSure.seedSetting, 'how sure seed', '0', 0, 1],
  ['spreadStyleSetting', howSure.spreadStyleSetting, 'how sure look', 'curve', 'curve', 'histogram'],
  ['apartSetting', howSure.apartSetting, 'how sure apart', 'yes', true, false],
  ['oddsTargetSetting', howSure.oddsTargetSetting('m'), 'how sure target m', '-2.50', decimal('-2.5'), decimal(0)],

  [
    'caseWordsSetting',
    theCase.caseWordsSetting('words', 'A farm'),
    'case words A farm',
    'One.\nTwo.',
    'One.\nTwo.',
    '',
  ],
  [
    'outlaySourceSetting',
    theCase.outlaySourceSetting('A farm'),
    'case outlay from A farm',
    'entries',
    'entries',
    'typed',
  ],
  ['outlaySetting', theCase.outlaySetting('A farm'), 'case outlay A farm', '125000', decimal(125_000), undefined],
  [
    'outlayEntriesSetting',
    theCase.outlayEntriesSetting('A farm'),
    'case outlay entries A farm',
    'boards holders',
    ['boards', 'holders'],
    [],
  ],
  [
    'outlayEndSetting',
    theCase.outlayEndSetting('low', 'A farm'),
    'case outlay low A farm',
    '90',
    decimal(90),
    undefined,
  ],
  [
    'outlayEndSetting',
    theCase.outlayEndSetting('high', 'A farm'),
    'case outlay high A farm',
    '5e3',
    decimal(5000),
    undefined,
  ],
  [
    'countedSetting',
    plans.countedSetting('rising', 'A farm'),
    'budget lines rising A farm',
    'rent seed',
    ['rent', 'seed'],
    [],
  ],
  ['countedSetting', plans.countedSetting('staying', 'A farm'), 'budget lines staying A farm', 'seed', ['seed'], []],
  ['caseYearsSetting', theCase.caseYearsSetting('A farm'), 'case years A farm', '7', 7, 10],
  ['caseRateSetting', theCase.caseRateSetting('A farm'), 'case rate A farm', '-0.5', decimal('-0.5'), undefined],
  ['caseLeftSetting', theCase.caseLeftSetting('A farm'), 'case left A farm', '2000', decimal(2000), decimal(0)],

  ['farmNameSetting', setUp.farmNameSetting, 'set up name', 'Willow Reach', 'Willow Reach', ''],
  ['farmCurrencySetting', setUp.farmCurrencySetting, 'set up currency', 'usd', 'usd', ''],
  ['farmFigureSetting', setUp.farmFigureSetting('boards'), 'set up boards', '3,5', '3,5', ''],
  ['farmQuestionSetting', setUp.farmQuestionSetting, 'set up question', 'plug', 'plug', 'hire'],
  ['farmUnitsSetting', setUp.farmUnitsSetting, 'set up units', 'us', 'us', undefined],
  ['farmTimeUnitSetting', setUp.farmTimeUnitSetting, 'set up counted in', 'week', 'week', 'day'],
  [
    'farmTimedSetting',
    setUp.farmTimedSetting('moveSeconds'),
    'set up timed moveSeconds',
    '12\ntimed: 4 batches, 9 March 2031',
    '12\ntimed: 4 batches, 9 March 2031',
    '',
  ],
  ['farmTimingSetting', setUp.farmTimingSetting, 'set up timing', 'asked', 'asked', undefined],
  ['farmNoLimitSetting', setUp.farmNoLimitSetting, 'set up no limit', 'yes', true, false],

  ['lineViewSetting', breakeven.lineViewSetting, 'breakeven view', 'difference', 'difference', 'both'],
  ['drawnPlansSetting', breakeven.drawnPlansSetting, 'breakeven plans', 'two', 'two', undefined],
  ['targetSetting', breakeven.targetSetting('m'), 'breakeven target m', '1200', decimal(1200), decimal(0)],
  [
    'differenceTargetSetting',
    breakeven.differenceTargetSetting('m'),
    'breakeven difference target m',
    '1e3',
    decimal(1000),
    decimal(0),
  ],
  ['rangeEndSetting', breakeven.rangeEndSetting('from', 'wage'), 'breakeven from wage', '12', decimal(12), undefined],
  ['rangeEndSetting', breakeven.rangeEndSetting('to', 'wage'), 'breakeven to wage', '18.0', decimal(18), undefined],
  ['secondInputSetting', breakeven.secondInputSetting, 'breakeven second', 'price', 'price', ''],

  ['sideBySideSetting', whatMatters.sideBySideSetting, 'side by side', 'cost bought', ['cost', 'bought'], []],

  ['resultsHiddenSetting', lesson.resultsHiddenSetting, 'results hidden', 'yes', true, false],
  ['openedStepsSetting', lesson.openedStepsSetting('A'), 'opened steps A', '3 0', [3, 0], []],
  ['classStepSetting', lesson.classStepSetting('A'), 'class step A', '4', 4, 0],
  ['guessesSetting', lesson.guessesSetting('A', 2), 'guesses 2 A', '30 45; x', '30 45; x', ''],

  ['trialsSetting', timing.trialsSetting, 'trials', 'step,plants,seconds\n', 'step,plants,seconds\n', ''],
  ['trialsNameSetting', timing.trialsNameSetting, 'trials name', 'mine.csv', 'mine.csv', ''],
  ['stepSetting', timing.stepSetting, 'timing step', 'moving', 'moving', ''],
  ['timeUsedSetting', timing.timeUsedSetting, 'timing use', 'standard', 'standard', undefined],
  ['timedInputSetting', timing.timedInputSetting('moving'), 'timing input moving', '-', '-', ''],
  ['termSetting', timing.termSetting('allowance'), 'timing allowance', '12.5', decimal('12.5'), decimal(15)],
  ['termSetting', timing.termSetting('within'), 'timing within', '3', decimal(3), decimal(5)],
  ['termSetting', timing.termSetting('confidence'), 'timing confidence', '90', decimal(90), decimal(95)],
  ['allowanceOfSetting', timing.allowanceOfSetting, 'timing allowance of', 'day', 'day', 'job'],
  [
    'watchSetting',
    timing.watchSetting,
    'timing watch',
    '1931590862000 148.3',
    { state: 'stopped', since, seconds: decimal('148.3') },
    { state: 'ready' },
  ],
  ['watchStepSetting', timing.watchStepSetting, 'timing watch step', 'moving', 'moving', ''],
  ['watchWaySetting', timing.watchWaySetting, 'timing watch way', 'at the bed', 'at the bed', ''],
  ['largeWatchSetting', timing.largeWatchSetting, 'timing large watch', 'yes', true, false],
  ['lastLapSetting', timing.lastLapSetting, 'timing last batch', '12 1931590862000 9.5', '12 1931590862000 9.5', ''],
  ['waySetting', timing.waySetting('one', 'moving'), 'timing way one moving', 'bench', 'bench', ''],
  ['waySetting', timing.waySetting('other', 'moving'), 'timing way other moving', 'bed', 'bed', ''],
  ['lossInputSetting', timing.lossInputSetting('moving'), 'timing loss input moving', '-', '-', ''],
  [
    'learnedPlantsSetting',
    timing.learnedPlantsSetting('moving'),
    'timing learned moving',
    '5000',
    decimal(5000),
    undefined,
  ],
  ['learnerSetting', timing.learnerSetting('moving'), 'timing learner moving', 'A', 'A', ''],
  ['watchPlantsSetting', timing.watchPlantsSetting, 'timing watch plants', '6o', '6o', ''],

  ['bedsPlanSetting', beds.bedsPlanSetting, 'beds plan', 'against', 'against', 'plan'],
  ['bedsFurtherSetting', beds.bedsFurtherSetting, 'beds further plan', 'Peat plug', 'Peat plug', ''],
  ['yearStartSetting', beds.yearStartSetting, 'beds start', '2031-03-09', march, undefined],
  ['workWeekSetting', beds.workWeekSetting, 'beds week', '2031-03-09', march, undefined],
  ['countedAtSetting', beds.countedAtSetting('set_time'), 'beds time set_time', 'move 2', 'move 2', undefined],
  ['countedAtSetting', beds.countedAtSetting('wash_time'), 'beds time wash_time', 'wash', 'wash', undefined],
  ['countedAtSetting', beds.countedAtSetting('other'), 'beds time other', 'none', 'none', undefined],
  ['staffHoursSetting', beds.staffHoursSetting('spare'), 'beds spare hours', 'none', 'none', ''],
  ['beyondHoursSetting', beds.beyondHoursSetting, 'beds beyond hours', 'second hire', 'second hire', 'overtime'],
  ['crowdingSetting', beds.crowdingSetting('density 1'), 'beds crowding density 1', '24.0', decimal(24), undefined],
  ['plantPatternSetting', beds.plantPatternSetting, 'beds crowding pattern', 'staggered', 'staggered', 'square'],

  ['bestStageSetting', bestWeeks.bestStageSetting, 'best stage', '2', 2, undefined],
  ['bestTimeSetting', bestWeeks.bestTimeSetting, 'best time', 'nursery_days', 'nursery_days', ''],
  ['bestDensitySetting', bestWeeks.bestDensitySetting, 'best density', 'holes', 'holes', ''],
  ['heldTimeSetting', bestWeeks.heldTimeSetting, 'best held', 'next', 'next', 'total'],
  ['bestWaySetting', bestWeeks.bestWaySetting('cost'), 'best way cost', 'lowest', 'lowest', undefined],
];

describe('work kept by an earlier version', () => {
  it.each(cases)('is opened as it was: %s', (_name, setting, key, kept, value) => {
    const choice = keptChoice();
    choice.restore({ [`setting ${key}`]: kept });
    expect(choice.get(setting)).toEqual(value);
  });

  it.each(cases)('is set again by the same key: %s', (_name, setting, key, _kept, value) => {
    const choice = keptChoice();
    choice.set(setting, value);
    expect(Object.keys(choice.kept())).toEqual([`setting ${key}`]);
    expect(choice.get(setting)).toEqual(value);
  });

  it.each(cases)('gives way to the usual value where it holds nothing of it: %s', (...[, setting, , , , usual]) =>
    expect(keptChoice().get(setting)).toEqual(usual),
  );

  it('has every setting in this list', () => {
    expect([...new Set(cases.map(([name]) => name))].sort()).toEqual(Object.keys(all).sort());
  });
});
