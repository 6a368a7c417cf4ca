import { createMemo, Show, type Accessor, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import type { ScreenProps } from '../../app/screenProps';
import { chosenEntry, resultGroups } from '../../../present/results/entryGroups';
import { NoAnswer } from '../sections/NoAnswer';
import { RadioRow } from './RadioRow';
import { EntryChooser } from './EntryChooser';
import { whoseOptions } from '../../../present/results/planSelection';
import { chooserTexts } from '../../../present/results/chooserTexts';
import { commonTexts } from '../../../present/text/commonTexts';

interface AskingHeadProps extends ScreenProps {
  /** The label of the result's chooser. */
  readonly label: string;
  readonly children: (result: Accessor<Cell>) => JSX.Element;
}

/** The choice of a result and of its plan, and below it what the screen adds. */
export function ResultChooser(props: AskingHeadProps): JSX.Element {
  const plans = createMemo(() => [props.plan, ...(props.against === undefined ? [] : [props.against])]);
  const groups = createMemo(() => resultGroups(props.store.shape(), plans()));
  const result = createMemo(() => chosenEntry(groups(), props.choice.result()));
  return (
    <Show when={result()} fallback={<NoAnswer finding={commonTexts.nothingToAsk} remedy={chooserTexts.noResults} />}>
      {(cell) => (
        <>
          <div class="asking">
            <EntryChooser
              label={props.label}
              groups={groups()}
              chosen={cell().name}
              choose={(name) => props.choice.setResult(name)}
            />
            <Show when={props.against !== undefined}>
              <RadioRow
                legend={chooserTexts.whose}
                options={whoseOptions(props.store.shape(), props.plan, props.against!)}
                chosen={props.choice.whose()}
                choose={(whose) => props.choice.setWhose(whose)}
              />
            </Show>
          </div>
          {props.children(cell)}
        </>
      )}
    </Show>
  );
}
