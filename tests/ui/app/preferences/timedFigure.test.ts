import { expect, test } from 'vitest';
import { farmFigureSetting } from '../../../../src/ui/app/preferences/settings/setUp';
import type { Setting } from '../../../../src/ui/app/preferences/settings/setting';
import { farmSourceOf, setTimedFigure } from '../../../../src/ui/app/preferences/timedFigure';

test('a figure is called timed for as long as its field holds what was timed', () => {
  const texts = new Map<string, string>();
  const choice = {
    get: <T>(setting: Setting<T>): T => setting.read(texts.get(setting.key) ?? ''),
    set: <T>(setting: Setting<T>, value: T): void => void texts.set(setting.key, setting.write(value)),
  };
  expect(farmSourceOf(choice, 'moveSeconds')).toBe('');
  setTimedFigure(choice, 'moveSeconds', '12,03', 'timed: 2 batches, 9 March 2031');
  expect(choice.get(farmFigureSetting('moveSeconds'))).toBe('12,03');
  expect(farmSourceOf(choice, 'moveSeconds')).toBe('timed: 2 batches, 9 March 2031');
  choice.set(farmFigureSetting('moveSeconds'), '13');
  expect(farmSourceOf(choice, 'moveSeconds')).toBe('');
});
