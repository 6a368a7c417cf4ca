import { createMemo, Show, type Accessor, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import type { PlanSelection } from '../../../present/results/planSelection';
import { createDraws } from '../../kit/risk/createDraws';
import { againstBars } from '../../../present/howSure/drivers';
import { DriversTable } from '../../kit/risk/DriversTable';
import { DrawsProgress } from '../../kit/risk/DrawsProgress';
import type { ScreenProps } from '../../app/screenProps';
import type { ShownBar } from '../../../present/whatMatters/tornado/bars';
import { whatMattersTexts } from '../../../present/whatMatters/texts';

interface DriversBesideProps extends ScreenProps {
  readonly result: Cell;
  readonly selection: PlanSelection;
  /** The tornado's bars, in order. */
  readonly bars: readonly ShownBar[];
  readonly inSight: Accessor<boolean>;
}

/**
 * Which guesses drive the spread, in the order of the tornado's bars, to compare all ranges at once with one at a time.
 */
export function DriversBeside(props: DriversBesideProps): JSX.Element {
  const order = createMemo(() => props.bars.map(({ lever }) => lever.cell.id));
  const longest = (): Cell | undefined => props.bars.find(({ swing }) => !swing.isNaN())?.lever.cell;
  const { settings, client, found } = createDraws(
    {
      get store() {
        return props.store;
      },
      get choice() {
        return props.choice;
      },
      get result() {
        return props.result;
      },
      get selection() {
        return { ...props.selection, beside: undefined };
      },
    },
    () => props.inSight(),
  );
  return (
    <Show
      when={found()?.indices}
      fallback={
        <Show when={found()?.certain !== true} fallback={<p class="quiet">{whatMattersTexts.noSpread}</p>}>
          <DrawsProgress
            shown={client.state()}
            draws={settings.draws()}
            stop={() => client.stop()}
            again={() => client.again()}
          />
        </Show>
      }>
      {(indices) => (
        <DriversTable
          indices={indices()}
          cells={props.store.shape().cells}
          choice={props.choice}
          order={order()}
          remark={(drivers) => againstBars(longest(), drivers)}
          goTo={props.goTo}
        />
      )}
    </Show>
  );
}
