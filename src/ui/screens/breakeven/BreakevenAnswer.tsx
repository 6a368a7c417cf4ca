import { createMemo, lazy, mergeProps, Show, Suspense, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import { Waiting } from '../../kit/sections/Waiting';
import { hasFurther } from '../../../present/allPlans/plans';
import type { ResultLines, Subject } from '../../../present/results/resultLines';
import { commonTexts } from '../../../present/text/commonTexts';
import type { ScreenProps } from '../../app/screenProps';
import { PairAnswer } from './PairAnswer';
import { createBreakevenSettings } from './settings';
import { TwoWay } from './twoWay/TwoWay';

const AllPlans = lazy(async () => ({ default: (await import('./allPlans/AllPlans')).AllPlans }));

interface BreakevenAskedProps extends ScreenProps {
  readonly result: Cell;
  readonly input: Cell;
  readonly lines: ResultLines;
  readonly subject: Subject;
}

/** The answer about one result and one input, of the two plans compared or of all, and of two inputs at once. */
export function BreakevenAnswer(props: BreakevenAskedProps): JSX.Element {
  const compared = createMemo(() => [props.against, props.plan].filter((plan) => plan !== undefined));
  const asked = mergeProps(props, {
    get hasFurther() {
      return hasFurther(props.store.shape().plans.length, compared());
    },
  });
  const settings = createBreakevenSettings(asked);
  return (
    <>
      <Show when={settings.isAll()} fallback={<PairAnswer {...props} settings={settings} />}>
        <Suspense fallback={<Waiting class="quiet wait">{commonTexts.oneMoment}</Waiting>}>
          <AllPlans {...props} settings={settings} compared={compared()} />
        </Suspense>
      </Show>
      <TwoWay
        {...props}
        view={settings.view()}
        targets={settings.targets()}
        range={settings.range().own ? settings.range().range : undefined}
      />
    </>
  );
}
