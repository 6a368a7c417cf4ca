import { describe, expect, it } from 'vitest';
import { budgetTable, tableName } from '../../../src/present/theCase/table';
import { hire, madeIn } from './budgets';

describe('the budget as a table', () => {
  it('has each line, the sums and the net change in exact numbers', () => {
    const thirds = hire
      .replace('in B: 6200', 'in B: third')
      .concat('\nbase [EUR/year]: 1000\nthird [EUR/year]: base * 19 / 3');
    expect(budgetTable(madeIn(thirds)).split('\r\n')).toEqual([
      'kind,entry,amount,unit',
      'added returns,Sales,1333.333333333333333333333333333333,EUR/year',
      'added returns,sum,1333.333333333333333333333333333333,EUR/year',
      'reduced costs,Rent,100,EUR/year',
      'reduced costs,sum,100,EUR/year',
      'added costs,Wages,700,EUR/year',
      'added costs,sum,700,EUR/year',
      'reduced returns,sum,0,EUR/year',
      'net change,,733.333333333333333333333333333333,EUR/year',
      '',
    ]);
  });

  it('keeps a name that another program could run as text', () => {
    expect(budgetTable(madeIn(hire.replace('label: Sales', 'label: =1+1')))).toContain(`\nadded returns,"'=1+1",1200,`);
  });

  it('has no sums beside a line without a value', () => {
    const text = budgetTable(
      madeIn(`${hire}\nnone: 0\nseed [EUR/year]: 5 | label: Seed | budget: cost | in B: house / none`),
    );
    expect(text).toContain('no value,Seed,,EUR/year');
    expect(text).not.toMatch(/sum|net change/);
  });

  it('is named after the model’s file', () => {
    expect(['hire.csv', 'a.b.csv', 'hire', '.csv'].map(tableName)).toEqual([
      'hire-case.csv',
      'a.b-case.csv',
      'hire-case.csv',
      'model-case.csv',
    ]);
  });
});
