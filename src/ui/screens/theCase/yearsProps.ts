import type { CaseBudget } from '../../../present/theCase/caseOf';
import type { PlanPair } from '../../../present/theCase/comparedEntries';
import type { ScreenProps } from '../../app/screenProps';
import type { Studies } from './studies';
import type { YearsSettings } from './yearsSettings';

/** What the part on the years is given. */
export interface YearsProps extends ScreenProps {
  readonly made: CaseBudget;
  readonly beside: PlanPair;
  /** Undefined where there is no net change to study. */
  readonly studies: Studies | undefined;
  readonly settings: YearsSettings;
}
