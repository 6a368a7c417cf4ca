import { createMemo, lazy, mergeProps, Show, Suspense, type Component, type JSX } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import { isQuantity, type Cell } from '../../../model/cell';
import { Waiting } from '../../kit/sections/Waiting';
import { hasFurther } from '../../../present/allPlans/plans';
import type { ResultLines, Subject } from '../../../present/results/resultLines';
import { commonTexts } from '../../../present/text/commonTexts';
import type { ScreenProps } from '../../app/screenProps';
import type { BreakevenAnswerProps } from './answerProps';
import { PairAnswer } from './PairAnswer';
import { createBreakevenSettings } from './settings';
import { TwoWay } from './twoWay/TwoWay';

const AllPlans = lazy(async () => ({ default: (await import('./allPlans/AllPlans')).AllPlans }));
const AllPlansChoices = lazy(async () => ({ default: (await import('./choices/AllPlansChoices')).AllPlansChoices }));
const ChoicesAnswer = lazy(async () => ({ default: (await import('./choices/ChoicesAnswer')).ChoicesAnswer }));

/** What every part of the answer takes. */
type PartProps = BreakevenAnswerProps & { readonly compared: readonly number[] };

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
  const part = (): Component<PartProps> => {
    const ofChoices = !isQuantity(props.input);
    if (settings.isAll()) return ofChoices ? AllPlansChoices : AllPlans;
    return ofChoices ? ChoicesAnswer : PairAnswer;
  };
  return (
    <>
      <Suspense fallback={<Waiting class="quiet wait">{commonTexts.oneMoment}</Waiting>}>
        <Dynamic component={part()} {...props} settings={settings} compared={compared()} />
      </Suspense>
      <Show when={isQuantity(props.input)}>
        <TwoWay
          {...props}
          view={settings.view()}
          targets={settings.targets()}
          range={settings.range().own ? settings.range().range : undefined}
        />
      </Show>
    </>
  );
}
