// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import { keptKey } from '../../../../src/ui/app/preferences/choice';
import { drawsSetting, seedSetting } from '../../../../src/ui/app/preferences/settings/howSure';
import * as theCase from '../../../../src/ui/app/preferences/settings/theCase';
import { caseSettings } from '../../../../src/ui/screens/theCase/caseSettings';

describe('what goes with a case', () => {
  it('is what was chosen for it, and nothing of other questions or other models', () => {
    const ofCase = {
      'setting case words Farm': 'Why now',
      'setting case by Farm': 'P.',
      'setting case outlay Farm': '4000',
      'setting case outlay low Farm': '3500',
      'setting case outlay high Farm': '5000',
      'setting case years Farm': '7',
      [keptKey(drawsSetting)]: '20000',
      [keptKey(seedSetting)]: '3',
    };
    const others = { result: 'margin', 'setting question': 'the case', 'setting case words Another farm': 'No' };
    expect(caseSettings({ ...ofCase, ...others }, 'Farm')).toEqual(ofCase);
  });

  it('leaves none of its settings behind', () => {
    const { caseWordsSetting, outlayEndSetting, ...years } = theCase;
    const settings = [
      ...(['words', 'by', 'for', 'date'] as const).map((part) => caseWordsSetting(part, 'Farm')),
      ...(['low', 'high'] as const).map((end) => outlayEndSetting(end, 'Farm')),
      ...Object.values(years).map((setting) => setting('Farm')),
    ];
    const kept = Object.fromEntries(settings.map((setting) => [keptKey(setting), 'x']));
    expect(caseSettings(kept, 'Farm')).toEqual(kept);
  });
});
