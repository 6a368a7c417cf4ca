import { createMemo, Show, type Accessor, type JSX } from 'solid-js';
import type { Cell } from '../../model/cell';
import type { Looked } from '../finding/looked';
import { createDraws } from '../howSure/createDraws';
import { againstBars } from '../howSure/drivers';
import { Drivers } from '../howSure/Drivers';
import { Progress } from '../howSure/Progress';
import type { ScreenProps } from '../screen';
import type { ShownBar } from './bars';

interface DriversBesideProps extends ScreenProps {
  readonly result: Cell;
  readonly looked: Looked;
  /** The tornado's bars, in order. */
  readonly bars: readonly ShownBar[];
  readonly inSight: Accessor<boolean>;
}

/** Which guesses drive the spread, in the order of the bars above: all ranges at once beside one at a time. */
export function DriversBeside(props: DriversBesideProps): JSX.Element {
  const order = createMemo(() => props.bars.map(({ lever }) => lever.cell.id));
  const longest = (): Cell | undefined => props.bars.find(({ swing }) => !swing.isNaN())?.lever.cell;
  const { settings, client, found } = createDraws(
    {
      get live() {
        return props.live;
      },
      get choice() {
        return props.choice;
      },
      get result() {
        return props.result;
      },
      get looked() {
        return { ...props.looked, beside: undefined };
      },
    },
    () => props.inSight(),
  );
  return (
    <Show
      when={found()?.indices}
      fallback={
        <Show
          when={found()?.certain !== true}
          fallback={<p class="quiet">No entry with a range touches it: there is no spread.</p>}>
          <Progress
            shown={client.shown()}
            draws={settings.draws()}
            stop={() => client.stop()}
            again={() => client.again()}
          />
        </Show>
      }>
      {(indices) => (
        <Drivers
          indices={indices()}
          cells={props.live.shape().cells}
          choice={props.choice}
          order={order()}
          remark={(drivers) => againstBars(longest(), drivers)}
          goTo={props.goTo}
        />
      )}
    </Show>
  );
}
