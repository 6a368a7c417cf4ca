import { describe, expect, it } from 'vitest';
import { placed, problem } from '../../src/core/problem';

describe('a fault', () => {
  it('has a place even where nothing is known of it', () => {
    expect(problem('code', 'message').where).toEqual({ row: 0, column: '', cell: '', text: '' });
  });

  it('keeps what is known of its place and takes the rest', () => {
    const fault = problem('code', 'message', { column: 'unit', text: 'hour' });
    expect(placed(fault, { row: 7, column: 'formula', cell: 'wage' })).toEqual({
      code: 'code',
      message: 'message',
      where: { row: 7, column: 'unit', cell: 'wage', text: 'hour' },
    });
  });

  it('is not changed by being placed', () => {
    const fault = problem('code', 'message');
    placed(fault, { row: 7 });
    expect(fault.where.row).toBe(0);
  });
});
