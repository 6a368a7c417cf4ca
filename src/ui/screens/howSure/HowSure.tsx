import { createMemo, lazy, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import { ResultChooser } from '../../kit/choosers/ResultChooser';
import { QuestionScreen } from '../../kit/sections/QuestionScreen';
import { ResultAnswer } from '../../kit/sections/ResultAnswer';
import { createChosenResult } from '../../app/store/chosenResult';
import { localFormat } from '../../app/preferences/localFormat';
import { MethodLink } from '../../kit/method/MethodLink';
import type { ScreenProps } from '../../app/screenProps';
import { DrawsPart } from './DrawsPart';
import { LazySection } from '../../kit/sections/LazySection';
import { hasFurther } from '../../../present/allPlans/plans';
import { allPlansTexts } from '../../../present/allPlans/texts';
import { todaySentence } from '../../../present/howSure/today';
import { howSureTexts } from '../../../present/howSure/texts';
import '../../kit/sections/answers.css';
import '../../kit/charts/curve.css';
import '../../kit/fields/fields.css';
import './styles.css';

const PlanOddsView = lazy(async () => ({ default: (await import('./PlanOddsView')).PlanOddsView }));

/** How sure: a result drawn many times from all ranges at once, what drives its spread, and what is worth measuring. */
export function HowSure(props: ScreenProps): JSX.Element {
  return (
    <QuestionScreen question="how sure">
      <ResultChooser {...props} label={howSureTexts.chooser}>
        {(result) => <Answer {...props} result={result()} />}
      </ResultChooser>
      <MethodLink choice={props.choice} entry="draws" />
    </QuestionScreen>
  );
}

function Answer(props: ScreenProps & { result: Cell }): JSX.Element {
  const { selection, error, question } = createChosenResult(props);
  return (
    <ResultAnswer {...props} error={error()} known={question()}>
      {(known) => (
        <DrawsPart
          {...props}
          result={props.result}
          selection={selection()}
          today={known().base.toNumber()}
          remark={todaySentence(known(), localFormat)}
          allPlans={<AllPlans {...props} />}
        />
      )}
    </ResultAnswer>
  );
}

/** How often each plan is the best of all; nothing where the model has no more plans than the two compared. */
function AllPlans(props: ScreenProps & { result: Cell }): JSX.Element {
  const compared = createMemo(() => [props.against, props.plan].filter((plan) => plan !== undefined));
  return (
    <Show when={hasFurther(props.store.shape().plans.length, compared())}>
      <LazySection id="plan-odds" heading={allPlansTexts.odds}>
        {(inSight) => <PlanOddsView {...props} compared={compared()} inSight={inSight} />}
      </LazySection>
    </Show>
  );
}
