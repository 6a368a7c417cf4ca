import { describe, expect, it } from 'vitest';
import { plain } from '../../src/core/dimension';
import { one, ratioFromText } from '../../src/core/ratio';
import { inScale, meetingScale, number, truth } from '../../src/formula/measured';

const cell = { op: 'cell', cell: 0 } as const;
const of = (scale: string) => number(cell, plain, ratioFromText(scale));

describe('values of one dimension meet', () => {
  it.each<[claim: string, scales: string[], meeting: string]>([
    ['in the one scale there is', ['0.01'], '0.01'],
    ['in the finer, where the other is a multiple', ['7', '1'], '1'],
    ['in the finer, in any order', ['1', '0.01', '1000'], '0.01'],
    ['in base units where none divides the others', ['0.003785411784', '0.0254'], '1'],
    ['in base units where there is none', [], '1'],
  ])('%s', (_claim, scales, meeting) => expect(meetingScale(scales.map(of))).toEqual(ratioFromText(meeting)));

  it('without regard to a literal 0', () => {
    expect(meetingScale([number(cell, undefined), of('0.01')])).toEqual(ratioFromText('0.01'));
  });
});

describe('a part in another scale', () => {
  it('is converted by the ratio of both', () => {
    expect(inScale(of('7'), one)).toEqual({ op: 'convert', of: cell, by: ratioFromText('7') });
    expect(inScale(of('1'), ratioFromText('7'))).toEqual({ op: 'convert', of: cell, by: ratioFromText('1/7') });
  });

  it('stays as it is in its own', () => expect(inScale(of('7'), ratioFromText('7'))).toBe(cell));

  it('stays as it is where it is a literal 0', () => {
    expect(inScale(number(cell, undefined), ratioFromText('7'))).toBe(cell);
  });

  it('is converted at once where it is written', () => {
    const written = number({ op: 'number', text: '0.1' }, plain);
    expect(inScale(written, ratioFromText('0.01'))).toEqual({ op: 'number', text: '10' });
  });

  it('true and false have none', () =>
    expect(truth(cell)).toMatchObject({ kind: 'truth', dimension: plain, scale: one }));
});
