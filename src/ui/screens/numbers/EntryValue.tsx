import { isHiddenError, type ShownValue } from '../../../present/numbers/shownValue';
import { createMemo, Match, Switch, type JSX } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import { isQuantity, type Cell } from '../../../model/cell';
import { wordsOf } from '../../../model/choices';
import { localFormat } from '../../app/preferences/localFormat';
import { usePage } from '../../app/pageContext';
import { ChoiceValue } from './ChoiceValue';
import { InputValue } from './InputValue';
import { NumberText } from '../../kit/numbers/NumberText';
import { withoutValue } from '../../../present/numbers/valueText';
import { truthWord } from '../../../present/text/truthWord';

interface EntryValueProps {
  readonly cell: Cell;
  readonly plan: number;
  readonly remark: string;
}

type Kind = 'input' | 'number' | 'truth' | 'none';

function kindOf({ content, error }: ShownValue): Kind {
  if (content?.kind === 'input') return 'input';
  if (error !== undefined || content?.kind !== 'calculated') return 'none';
  return content.gives;
}

/** What an entry shows in one plan. */
export function EntryValue(props: EntryValueProps): JSX.Element {
  const { store } = usePage();
  const shown = createMemo(() => store.shown(props.plan, props.cell.id));
  const kind = createMemo(() => kindOf(shown()));
  const input = createMemo(() => {
    const { content } = shown();
    return content?.kind === 'input' ? content : undefined;
  });
  return (
    <Switch>
      <Match when={input()}>
        {(content) => (
          <Dynamic
            component={isQuantity(props.cell) ? InputValue : ChoiceValue}
            cell={props.cell}
            plan={props.plan}
            content={content()}
            remark={props.remark}
          />
        )}
      </Match>
      <Match when={kind() === 'number'}>
        <NumberText text={wordsOf(props.cell, shown().number) ?? localFormat.value(shown().number, props.cell.unit)} />
      </Match>
      <Match when={kind() === 'truth'}>
        <span class="truth" classList={{ warning: props.cell.role === 'check' && shown().number.isZero() }}>
          {truthWord(props.cell, !shown().number.isZero())}
        </span>
      </Match>
      <Match when={kind() === 'none'}>
        <span classList={{ 'no-value': !isHiddenError(shown().error), quiet: isHiddenError(shown().error) }}>
          {withoutValue(shown().error)}
        </span>
      </Match>
    </Switch>
  );
}
