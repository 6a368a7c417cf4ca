import { createMemo, Match, Switch, type JSX } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import type { Cell } from '../../model/cell';
import { wordsOf } from '../../model/choices';
import type { Shown } from '../cellSignals';
import { here } from '../here';
import { useWork } from '../work';
import { ChoiceValue } from './ChoiceValue';
import { InputValue } from './InputValue';
import { NumberText } from './NumberText';
import { truthWord } from './truthWord';

interface EntryValueProps {
  readonly cell: Cell;
  readonly plan: number;
  readonly remark: string;
}

type Kind = 'input' | 'number' | 'truth' | 'none';

function kindOf({ content, error }: Shown): Kind {
  if (content?.kind === 'input') return 'input';
  if (error !== undefined || content?.kind !== 'calculated') return 'none';
  return content.gives;
}

/** What an entry shows in one plan. */
export function EntryValue(props: EntryValueProps): JSX.Element {
  const { live } = useWork();
  const shown = createMemo(() => live.shown(props.plan, props.cell.id));
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
            component={props.cell.choices.length > 0 ? ChoiceValue : InputValue}
            cell={props.cell}
            plan={props.plan}
            content={content()}
            remark={props.remark}
          />
        )}
      </Match>
      <Match when={kind() === 'number'}>
        <NumberText text={wordsOf(props.cell, shown().number) ?? here.value(shown().number, props.cell.unit)} />
      </Match>
      <Match when={kind() === 'truth'}>
        <span class="truth" classList={{ warning: props.cell.role === 'check' && shown().number.isZero() }}>
          {truthWord(props.cell, !shown().number.isZero())}
        </span>
      </Match>
      <Match when={kind() === 'none'}>
        <span class="no-value">no value</span>
      </Match>
    </Switch>
  );
}
