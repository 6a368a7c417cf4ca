import { createSignal, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import { editIn } from '../../../../model/edit';
import type { Plan } from '../../../../model/model';
import { addFormTexts } from '../../../../present/numbers/own/addForm';
import { figuresTexts } from '../../../../present/numbers/figuresTexts';
import { typedNumber } from '../../../../present/text/typedNumber';
import { usePage } from '../../../app/pageContext';
import { localFormat } from '../../../app/preferences/localFormat';
import { focusFault } from '../own/focusFault';
import { WordField } from '../own/WordField';
import '../own/own.css';

interface NumberInPlaceProps {
  readonly cell: Cell;
  readonly name: string;
  readonly plan: Plan;
  readonly close: () => void;
}

/** Puts a number in the place of what a figure is worked out from, in one plan. */
export function NumberInPlace(props: NumberInPlaceProps): JSX.Element {
  const { store } = usePage();
  const [typed, setTyped] = createSignal('');
  const [fault, setFault] = createSignal('');
  const put = (event: SubmitEvent & { currentTarget: HTMLFormElement }): void => {
    event.preventDefault();
    const read = typedNumber(typed(), localFormat);
    if ('code' in read) {
      setFault(typed().trim() === '' ? figuresTexts.noNumber : read.message);
      focusFault(event.currentTarget);
      return;
    }
    store.finish();
    store.enter(editIn(store.model(), props.plan, props.cell.id, read.text));
    store.finish();
    props.close();
  };
  return (
    <form
      class="own-form"
      onSubmit={put}
      onKeyDown={(event) => {
        if (event.key === 'Escape') props.close();
      }}>
      <WordField
        label={figuresTexts.inPlace(props.name)}
        text={typed()}
        fault={fault()}
        decimal
        focused
        onText={(text) => {
          setTyped(text);
          setFault('');
        }}
      />
      <p class="own-buttons">
        <button type="submit" class="own-press">
          {figuresTexts.putIn}
        </button>
        <button type="button" class="word" onClick={() => props.close()}>
          {addFormTexts.close}
        </button>
      </p>
    </form>
  );
}
