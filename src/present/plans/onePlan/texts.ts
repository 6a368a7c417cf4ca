import { wording, wordingOf } from '../../../language/wording';

/** Words round the enterprise budget of one plan. */
export const onePlanTexts = {
  plan: wording`Of plan`,
  onlyPlan: wording`The plan`,
  region: wording`Lines of the enterprise budget`,
  entry: wording`line`,
  parts: {
    returns: wording`Returns with the plants`,
    otherReturns: wording`Other returns`,
    variable: wording`Variable costs, which rise with each plant`,
    fixed: wording`Fixed costs, which stay as they are`,
  },
  byHand: wording`counted so by hand`,
  counting: wording`count instead as`,
  fixed: wordingOf('count a line as')`fixed`,
  variable: wordingOf('count a line as')`variable`,
  countAsFixed: (name: string) => wording`Count ${name} as fixed`,
  countAsVariable: (name: string) => wording`Count ${name} as variable`,
  allByRule: wording`Count all by the rule`,
  totals: {
    returns: wording`all returns`,
    variable: wording`all variable costs`,
    fixed: wording`all fixed costs`,
  },
  overVariable: wording`Margin over variable costs`,
  margin: wording`Margin`,
  picture: (unit: string) => wording`What a plant costs, by kind, ${unit}`,
  pictureOfYear: (unit: string) => wording`What the year costs, by kind, ${unit}`,
  variableMark: wording`filled: variable`,
  fixedMark: wording`hatched: fixed`,
  yields: wording`Breakeven price at other yields`,
  today: wording`today`,
  yieldHeads: {
    yield: wording`plants a year`,
    share: wording`against today`,
    price: wording`price that covers all costs`,
  },
  noLines: wording`No entry is a line of the yearly budget in one currency: mark returns and costs in the file’s budget column, or add a cost or return beside the numbers.`,
  noPlants: wording`No entry counts plants a year, so nothing is said of a plant.`,
  noPrice: wording`No price covers the costs of plants that are not there.`,
  unknown: wording`A line has no value in this plan today, so nothing can be added up.`,
} as const;
