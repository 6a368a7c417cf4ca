import { createMemo, For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import { localFormat } from '../../app/preferences/localFormat';
import { unitAfter } from '../../../present/text/saidUnits';
import type { ScreenProps } from '../../app/screenProps';
import { WaitingOr } from '../../kit/sections/WaitingOr';
import { Link } from '../../kit/Link';
import { decisions, guesses, type Guess } from '../../../present/theCase/assumed';
import { ComparedTable } from './ComparedTable';
import type { PlanPair } from '../../../present/theCase/comparedEntries';
import type { Studies } from './studies';
import { assumedTexts } from '../../../present/theCase/assumedTexts';

interface AssumedProps extends ScreenProps {
  readonly beside: PlanPair;
  readonly names: readonly [string, string];
  readonly studies: Studies;
}

/** What the plans set differently, and the guesses on which the answer depends most. */
export function AssumedPart(props: AssumedProps): JSX.Element {
  const decided = createMemo(() => decisions(props.beside));
  const guessed = createMemo(() => {
    const found = props.studies.switches();
    return found && guesses(found, props.store.model(), props.plan, localFormat);
  });
  return (
    <>
      <Show when={decided().length > 0}>
        <div class="in-columns">
          <ComparedTable
            caption={assumedTexts.decisions}
            plans={props.names}
            goTo={props.goTo}
            groups={[{ heading: '', rows: decided() }]}
          />
        </div>
      </Show>
      <Show when={guessed()} fallback={<WaitingOr reason={props.studies.broken()}>{assumedTexts.looking}</WaitingOr>}>
        {(found) => (
          <Show when={found().length > 0} fallback={<p>{assumedTexts.noGuess}</p>}>
            <Guesses guesses={found()} nameOf={props.beside.nameOf} goTo={props.goTo} />
          </Show>
        )}
      </Show>
    </>
  );
}

interface GuessesProps {
  readonly guesses: readonly Guess[];
  readonly nameOf: (cell: Cell) => string;
  readonly goTo: (cell: number) => void;
}

function Guesses(props: GuessesProps): JSX.Element {
  return (
    <div class="guesses">
      <p class="quiet" id="case-guesses">
        {assumedTexts.guesses}
      </p>
      <ul aria-labelledby="case-guesses">
        <For each={props.guesses}>
          {({ cell, value, range, from }) => (
            <li>
              <span class="led">
                <Link onPress={() => props.goTo(cell.id)}>{props.nameOf(cell)}</Link>
                <span class="leader" aria-hidden="true" />
                <span class="guess">
                  {value} <span class="unit">{unitAfter(value, cell.unitText)}</span>
                </span>
              </span>
              <span class="from">{assumedTexts.rangeFrom(range, from)}</span>
            </li>
          )}
        </For>
      </ul>
    </div>
  );
}
