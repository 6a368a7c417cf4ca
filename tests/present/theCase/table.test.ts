import { describe, expect, it } from 'vitest';
import { exportTable } from '../../../src/files/exportTable';
import { takenRows } from '../../../src/present/table/takenOut';
import { budgetRows, budgetTable } from '../../../src/present/theCase/table';
import { format, hire, madeIn } from './budgets';

function csv(text: string): string[] {
  const made = madeIn(text);
  const table = budgetTable(budgetRows(made, format), made, ({ label }) => label);
  return exportTable(takenRows(table, 'all', format)).split('\r\n');
}

describe('the budget as a table', () => {
  it('has each line, the sums by their signs and the net change in exact numbers', () => {
    const thirds = hire
      .replace('in B: 6200', 'in B: third')
      .concat('\nbase [EUR/year]: 1000\nthird [EUR/year]: base * 19 / 3');
    expect(csv(thirds)).toEqual([
      'part,entry,"amount, EUR/year","sum, EUR/year"',
      'Added returns,Sales,1333.333333333333333333333333333333,',
      'Added returns,sum,,1333.333333333333333333333333333333',
      'Reduced costs,Rent,100,',
      'Reduced costs,sum,,100',
      'Added costs,Wages,700,',
      'Added costs,sum,,-700',
      'Reduced returns,sum,,0',
      'Net change,,,733.333333333333333333333333333333',
      '',
    ]);
  });

  it('keeps a name that another program could run as text', () => {
    expect(csv(hire.replace('label: Sales', 'label: =1+1'))).toContain(`Added returns,"'=1+1",1200,`);
  });

  it('has no sums beside a line without a value', () => {
    const lines = csv(`${hire}\nnone: 0\nseed [EUR/year]: 5 | label: Seed | budget: cost | in B: house / none`);
    expect(lines).toContain('no value,Seed,,');
    expect(lines).toContain('Net change,,,');
    expect(lines.join()).not.toContain(',sum,');
  });
});
