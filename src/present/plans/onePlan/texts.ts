/** Words round the enterprise budget of one plan. */
export const onePlanTexts = {
  plan: 'Of plan',
  region: 'Lines of the enterprise budget',
  entry: 'line',
  parts: {
    returns: 'Returns with the plants',
    otherReturns: 'Other returns',
    variable: 'Variable costs, which rise with each plant',
    fixed: 'Fixed costs, which stay as they are',
  },
  byHand: 'counted so by hand',
  counting: 'other way',
  count: {
    asFixed: 'count as fixed',
    asVariable: 'count as variable',
    asOther: 'count as other return',
    asReturn: 'count with the plants',
  },
  /** @param what the text of the press */
  countOf: (what: string, name: string) => `${what}: ${name}`,
  allByRule: 'Count all by the rule',
  totals: {
    returns: 'all returns',
    variable: 'all variable costs',
    fixed: 'all fixed costs',
  },
  overVariable: 'Margin over variable costs',
  margin: 'Margin',
  picture: (unit: string) => `What a plant costs, by kind, ${unit}`,
  pictureOfYear: (unit: string) => `What the year costs, by kind, ${unit}`,
  variableMark: 'filled: variable',
  fixedMark: 'hatched: fixed',
  yields: 'Breakeven price at other yields',
  today: 'today',
  yieldHeads: { yield: 'plants a year', share: 'against today', price: 'price that covers all costs' },
  noLines:
    'No entry is a line of the yearly budget in one currency: mark returns and costs in the file’s budget column, or add a cost or return beside the numbers.',
  noPlants: 'No entry counts plants a year, so nothing is said of a plant.',
  noPrice: 'No price covers the costs of plants that are not there.',
  unknown: 'A line has no value in this plan today, so nothing can be added up.',
} as const;
