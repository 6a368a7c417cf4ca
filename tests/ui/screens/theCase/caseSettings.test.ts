// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import { keptKey } from '../../../../src/ui/app/preferences/choice';
import { drawsSetting, seedSetting } from '../../../../src/ui/app/preferences/settings/howSure';
import { caseSettings } from '../../../../src/ui/screens/theCase/caseSettings';

describe('what goes with a case', () => {
  it('is what was chosen for it, and nothing of other questions or other models', () => {
    const ofCase = {
      'setting case words Farm': 'Why now',
      'setting case by Farm': 'P.',
      'setting case outlay Farm': '4000',
      'setting case years Farm': '7',
      [keptKey(drawsSetting)]: '20000',
      [keptKey(seedSetting)]: '3',
    };
    const others = { result: 'margin', 'setting question': 'the case', 'setting case words Another farm': 'No' };
    expect(caseSettings({ ...ofCase, ...others }, 'Farm')).toEqual(ofCase);
  });
});
