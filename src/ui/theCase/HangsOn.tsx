import { createMemo, For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../model/cell';
import { Sentence } from '../finding/Sentence';
import { here } from '../here';
import { HowWorked } from '../method/HowWorked';
import type { ScreenProps } from '../screen';
import { Link } from '../words';
import { Aligned } from './Aligned';
import type { Made } from './caseOf';
import { closest, type Hinge } from './closest';
import { besideLabel, hangsTold, hingeTexts, oddsTold, rangeTold } from './hangsTold';
import type { Studies } from './studies';

interface HangsOnProps extends ScreenProps {
  readonly made: Made;
  readonly studies: Studies;
  readonly nameOf: (cell: Cell) => string;
}

/** Which few inputs turn the answer, and how sure it is with all ranges at once. */
export function HangsOn(props: HangsOnProps): JSX.Element {
  const hinges = createMemo(() => {
    const found = props.studies.switches();
    return found && closest(found, props.live.model(), props.plan);
  });
  const openHowSure = (): void => props.choice.setSetting('question', 'how sure');
  return (
    <>
      <Show
        when={hinges()}
        fallback={
          <p class="quiet waiting" role="status">
            {props.studies.broken() || 'Looking for where the answer turns …'}
          </p>
        }>
        {(found) => (
          <>
            <p>
              <Sentence phrase={hangsTold(found(), props.made, props.nameOf, here)} />
            </p>
            <Show when={found().hinges.length > 0}>
              <Hinges hinges={found().hinges} nameOf={props.nameOf} goTo={props.goTo} />
            </Show>
          </>
        )}
      </Show>
      <p class="odds">
        <Show when={props.studies.odds()}>
          {(found) => (
            <>
              <Sentence phrase={oddsTold(found(), props.made, here)} />{' '}
            </>
          )}
        </Show>
        <span class="off-paper">
          <Link onPress={openHowSure}>How sure</Link> tells more.
        </span>
      </p>
      <HowWorked choice={props.choice} entry="switching" />
    </>
  );
}

interface HingesProps {
  readonly hinges: readonly Hinge[];
  readonly nameOf: (cell: Cell) => string;
  readonly goTo: (cell: number) => void;
}

function Hinges(props: HingesProps): JSX.Element {
  return (
    <table class="hinges">
      <caption>Where it turns first, each entry by itself</caption>
      <thead>
        <tr>
          <th scope="col">entry</th>
          <th scope="col">today</th>
          <th scope="col">turns at</th>
          <th scope="col">
            <span class="heard">unit</span>
          </th>
          <th scope="col">its range</th>
        </tr>
      </thead>
      <tbody>
        <For each={props.hinges}>
          {(hinge) => {
            const texts = hingeTexts(hinge, here);
            return (
              <tr>
                <th scope="row">
                  <Link onPress={() => props.goTo(hinge.cell.id)}>{props.nameOf(hinge.cell)}</Link>
                  <span class="narrow-only">{besideLabel(hinge, here)}</span>
                </th>
                <td>
                  <Aligned text={texts.today} />
                </td>
                <td>
                  <Aligned text={texts.turns} />
                </td>
                <td class="unit">{texts.unit}</td>
                <td class="range-says">{rangeTold(hinge, here)}</td>
              </tr>
            );
          }}
        </For>
      </tbody>
    </table>
  );
}
