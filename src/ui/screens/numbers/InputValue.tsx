import { createMemo, createUniqueId, Show, type JSX } from 'solid-js';
import { numberToText, type Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import { isLimit } from '../../../model/limits';
import { editIn, type Edit } from '../../../model/edit';
import type { Content } from '../../../model/content';
import { createField } from '../../app/store/modelField';
import { localFormat } from '../../app/preferences/localFormat';
import { printedUnit } from '../../../present/text/printedUnit';
import { entryTexts } from '../../../present/numbers/entryTexts';
import { fieldName } from '../../../present/numbers/spokenField';
import { typedNumber } from '../../../present/text/typedNumber';
import { usePage } from '../../app/pageContext';
import { LimitMark } from './own/LimitMark';
import { RangeMark } from './RangeMark';

export interface InputValueProps {
  readonly cell: Cell;
  readonly plan: number;
  readonly content: Content & { readonly kind: 'input' };
  /** An addition to the field's name for screen readers. */
  readonly remark: string;
}

/** The figures from which numbers.css aligns a text's decimal mark with those of other numbers. */
function decimalsOf(text: string): { decimals: number; points: number } {
  const at = text.indexOf(localFormat.marks.decimal);
  return { decimals: at === -1 ? 0 : text.length - at - 1, points: at === -1 ? 1 : 0 };
}

/** The number of an input in one plan, or in all that share it: a text field with its range below. */
export function InputValue(props: InputValueProps): JSX.Element {
  const { store, drafts } = usePage();
  const faultId = createUniqueId();
  const target = createMemo(() => editIn(store.shape(), store.shape().plans[props.plan]!, props.cell.id, ''));
  const commit = (text: string): void => store.enter({ ...target(), text });
  const field = createField({
    store,
    drafts,
    commit,
    key: target,
    committed: () => props.content.text,
    show: (text) => localFormat.written(text),
    read: (typed) => typedNumber(typed, localFormat, props.content.text),
  });
  const place = createMemo(() => decimalsOf(field.text()));
  const name = (): string => fieldName(props.cell, props.remark);
  // On some phones the decimal keypad has no minus sign.
  const keypad = (): 'text' | 'decimal' =>
    props.content.number.isNegative() || props.cell.range?.low.isNegative() === true ? 'text' : 'decimal';
  const range = createMemo(() => (props.content.own ? undefined : props.cell.range));
  return (
    <div class="input-value" classList={{ ranged: range() !== undefined }}>
      <span class="field-box">
        <input
          class="number-field"
          type="text"
          inputmode={keypad()}
          autocomplete="off"
          spellcheck={false}
          data-model-field=""
          aria-label={name()}
          value={field.text()}
          aria-invalid={field.problem() === undefined ? undefined : 'true'}
          aria-describedby={field.problem() === undefined ? undefined : faultId}
          style={{ '--decimals': place().decimals, '--points': place().points }}
          onInput={(event) => field.onInput(event)}
          onFocus={() => field.onFocus()}
          onBlur={() => field.onBlur()}
          onKeyDown={(event) => field.onKeyDown(event)}
        />
      </span>
      <Show when={range()}>
        {(limits) => (
          <RangeMark
            label={name()}
            unit={printedUnit(props.cell.unitText)}
            range={limits()}
            step={props.cell.step}
            value={props.content.number}
            onMove={(value: Decimal) => commit(numberToText(value))}
            onRest={() => store.finish()}
          />
        )}
      </Show>
      <Limit cell={props.cell} isLifted={props.content.number.isZero()} target={target()} />
      <Show when={field.problem()}>
        {(problem) => <TypedFault id={faultId} message={problem().message} stands={props.content.text} />}
      </Show>
    </div>
  );
}

function Limit(props: { cell: Cell; isLifted: boolean; target: Edit }): JSX.Element {
  const { store } = usePage();
  return (
    <Show when={isLimit(store.shape(), props.cell.name)}>
      <LimitMark {...props} />
    </Show>
  );
}

/** What is wrong with a typed text, and the number still in force. */
function TypedFault(props: { id: string; message: string; stands: string }): JSX.Element {
  return (
    <p class="message fault" id={props.id}>
      {props.message} <span class="stands">{entryTexts.stands(localFormat.written(props.stands))}</span>
    </p>
  );
}
