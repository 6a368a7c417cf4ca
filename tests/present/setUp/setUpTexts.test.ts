import { expect, it } from 'vitest';
import { farmFileName, setUpTexts } from '../../../src/present/setUp/setUpTexts';

it.each([
  ['Willow Reach', 'willow-reach.csv'],
  ['Ferme Été & Fils', 'ferme-ete-fils.csv'],
  ['水耕農園', '水耕農園.csv'],
  ['../..', 'my-farm.csv'],
  [undefined, 'my-farm.csv'],
])('the file of %s is %s', (name, file) => expect(farmFileName(name)).toBe(file));

it('the rule of ranges is said as the model has it', () => {
  expect(setUpTexts.rule('hire').replaceAll('\u00a0', ' ')).toContain(
    '20 % to each side, times on the water 10 %, losses from half to one and a half',
  );
});
