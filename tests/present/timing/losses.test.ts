import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readModelText } from '../../../src/files/readModel';
import { textOf } from '../../../src/present/text/phrase';
import { lossSentence, shareOffer, shareTargets, type ShareTarget } from '../../../src/present/timing/losses';
import { modelOf } from '../../model/table';
import { english, only, read, timing } from './trials';

const hire = readModelText(readFileSync('models/transplant-hire.csv', 'utf8')).model;
const losses = only('step,plants,seconds,lost\nmoving,148,900,15\n').losses!;

function target(name: string): ShareTarget {
  return shareTargets(hire, 1).find(({ cell }) => cell.name === name)!;
}

describe('a lost share', () => {
  // 15 in 148: 0.0624 to 0.1605 (Newcombe, Statistics in Medicine 17, 1998).
  it('is told with Wilson’s interval', () =>
    expect(read(textOf(lossSentence('moving', losses, timing(), english)))).toBe(
      'Moving: 15 of 148 plants lost or culled, 10 %, between 6.2 % and 16 % at 95 % confidence.',
    ));

  it('fills what is lost as it is, and what is kept with the rest', () => {
    const lost = shareOffer(hire, 1, target('reusable_loss'), losses)!;
    expect([lost.value, ...lost.range!].map(String)).toEqual(['10.14', '6.239', '16.05']);
    const kept = shareOffer(hire, 1, target('nursery_survival'), losses)!;
    expect([kept.value, ...kept.range!].map(String)).toEqual(['89.86', '83.95', '93.761']);
  });

  it('is offered to shares lost or kept only, and to no other per cent', () => {
    const names = shareTargets(hire, 1).map(({ cell }) => cell.name);
    expect(names).toContain('finish_survival_after_nursery');
    expect(names).not.toContain('allowance');
    expect(names).not.toContain('crowding_loss');
  });

  it('is offered to shares with Spanish words', () => {
    const finca = modelOf(`
      a [%]: 97 | label: Quedan tras el trasplante
      b [%]: 3 | label: Soportes perdidos en cada uso
      c [%]: 12 | label: Suplemento
      d [%]: 95 | label: Supervivencia en el vivero
    `);
    expect(shareTargets(finca, 0).map(({ cell, holds }) => `${cell.name} ${holds}`)).toEqual([
      'a kept',
      'b lost',
      'd kept',
    ]);
  });
});
