import { batch, createMemo, type Accessor } from 'solid-js';
import { namedPlans, planHead } from '../../../present/allPlans/plans';
import type { Option } from '../../../present/text/option';
import { bedsFurtherSetting, bedsPlanSetting } from '../../app/preferences/settings/beds';
import type { ScreenProps } from '../../app/screenProps';

interface BedsPlan {
  /** Index of the plan whose beds are looked at. */
  readonly plan: Accessor<number>;
  readonly nameOf: (plan: number) => string;
  /** Every plan of the model by its index, A and B first. */
  readonly options: Accessor<readonly Option<string>[]>;
  /** The index of the plan, as an option. */
  readonly chosen: Accessor<string>;
  readonly choose: (option: string) => void;
}

/** The choice of the plan whose beds are looked at: one of the two compared, or any other of the model. */
export function createBedsPlan(props: ScreenProps): BedsPlan {
  const nameOf = (plan: number): string => props.store.shape().plans[plan]?.name ?? '';
  const compared = createMemo(() => [props.against, props.plan].filter((plan) => plan !== undefined));
  const further = createMemo(() => {
    const name = props.choice.get(bedsFurtherSetting);
    const index = props.store.shape().plans.findIndex((plan) => plan.name === name);
    return name === '' || compared().includes(index) ? -1 : index;
  });
  const plan = createMemo(() => {
    if (further() !== -1) return further();
    return props.choice.get(bedsPlanSetting) === 'against' ? (props.against ?? props.plan) : props.plan;
  });
  const options = createMemo(() => {
    const plans = namedPlans(props.store.shape(), compared());
    const rest = plans.map((_plan, p) => p).filter((p) => !compared().includes(p));
    return [...compared(), ...rest].map((p) => ({ value: String(p), label: planHead(plans[p]!) }));
  });
  const choose = (option: string): void => {
    const index = Number(option);
    const isFurther = !compared().includes(index);
    batch(() => {
      props.choice.set(bedsFurtherSetting, isFurther ? nameOf(index) : '');
      if (!isFurther) props.choice.set(bedsPlanSetting, index === props.plan ? 'plan' : 'against');
    });
  };
  return { plan, nameOf, options, chosen: () => String(plan()), choose };
}
