import type { JSX } from 'solid-js';
import { usePage } from '../app/pageContext';
import { HiddenMoneyList } from '../kit/hiddenMoney/HiddenMoneyList';

/** What may hide behind the answer of the plans that stand side by side, above the headlines. */
export function HiddenMoneyBar(props: { isShown: boolean }): JSX.Element {
  const { store, compared, navigation, settled } = usePage();
  return (
    <HiddenMoneyList
      store={store}
      plan={compared.plan()}
      against={compared.against()}
      goTo={navigation.goTo}
      settled={settled}
      open={false}
      isShown={props.isShown}
    />
  );
}
