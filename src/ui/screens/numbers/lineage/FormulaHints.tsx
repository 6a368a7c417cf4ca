import { createMemo, For, Show, untrack, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import { withOwnNumbers, type OwnNumbers } from '../../../../model/change/ownNumbers';
import { ownSources } from '../../../../model/change/sources';
import {
  formulaTexts,
  givenText,
  ownNumbersSaid,
  ownNumbersText,
  repairOffers,
} from '../../../../present/numbers/own/formulaTexts';
import { usePage } from '../../../app/pageContext';
import { Link } from '../../../kit/Link';

interface FormulaHintsProps {
  readonly cell: Cell;
  readonly column: string;
  readonly typed: string;
  /** Whether it is being typed. */
  readonly focused: boolean;
  readonly isFaulty: boolean;
  readonly onText: (text: string) => void;
  /** Takes back what was typed, as the model has something else instead. */
  readonly onReplaced: () => void;
}

/** What a formula gives, while it is typed; and what would mend it, where it cannot be taken. */
export function FormulaHints(props: FormulaHintsProps): JSX.Element {
  const { store, changes } = usePage();
  const given = createMemo(() =>
    props.focused && !props.isFaulty ? givenText(store.shape(), props.cell, props.column, props.typed) : undefined,
  );
  const repairs = createMemo(() =>
    props.isFaulty ? repairOffers(store.shape(), props.cell, props.column, props.typed) : [],
  );
  const ownNumbers = (): OwnNumbers | undefined => {
    const label = (number: number, of: number): string => formulaTexts.partLabel(props.cell.label, number, of);
    const words = { label, source: ownSources.entered(new Date()) };
    const { file } = store.origin();
    return withOwnNumbers(store.model(), props.cell, props.column, props.typed, words, file.sheet);
  };
  const offered = createMemo(() => {
    if (!props.isFaulty) return undefined;
    return props.typed === '' ? undefined : untrack(ownNumbers);
  });
  const makeEntries = (): void => {
    const made = ownNumbers();
    if (made === undefined) return;
    const { row, label } = props.cell;
    props.onReplaced();
    store.replace(made.sheet);
    changes.say(ownNumbersSaid(made, label), row);
  };
  return (
    <>
      <Show when={given()}>{(text) => <p class="quiet gives">{text()}</p>}</Show>
      <Show when={repairs().length > 0 || offered() !== undefined}>
        <p class="repairs" onMouseDown={(event) => event.preventDefault()}>
          <For each={repairs()}>{({ text, words }) => <Link onPress={() => props.onText(text)}>{words}</Link>}</For>
          <Show when={offered()}>{(made) => <Link onPress={makeEntries}>{ownNumbersText(made())}</Link>}</Show>
        </p>
      </Show>
    </>
  );
}
