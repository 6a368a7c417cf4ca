import { createSignal, createUniqueId, For, lazy, Show, Suspense, type JSX } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import { addTexts } from '../../../../present/numbers/own/addWords';
import { commonTexts } from '../../../../present/text/commonTexts';
import { usePage } from '../../../app/pageContext';
import type { FormKind } from './formKinds';
import './own.css';

const forms = {
  line: lazy(async () => ({ default: (await import('./AddLine')).AddLine })),
  entry: lazy(async () => ({ default: (await import('./AddEntry')).AddEntry })),
  steps: lazy(async () => ({ default: (await import('./StepPriceForm')).StepPriceForm })),
  whole: lazy(async () => ({ default: (await import('./WholeModel')).WholeModel })),
};

/** Words that open a form below them, one at a time. */
export function OwnWork(props: { kinds: readonly FormKind[]; group?: string }): JSX.Element {
  const { changes } = usePage();
  const [open, setOpen] = createSignal<FormKind>();
  const id = createUniqueId();
  let words: HTMLParagraphElement | undefined;
  const toggle = (kind: FormKind): void => {
    changes.close();
    setOpen(open() === kind ? undefined : kind);
  };
  const close = (): void => {
    const at = props.kinds.indexOf(open() ?? 'line');
    setOpen(undefined);
    words?.querySelectorAll('button')[at]?.focus();
  };
  return (
    <div class="own-work">
      <p class="own-words" ref={words}>
        <For each={props.kinds}>
          {(kind) => (
            <button
              type="button"
              class="word"
              aria-expanded={open() === kind}
              aria-controls={open() === kind ? id : undefined}
              aria-label={kind === 'entry' && props.group !== undefined ? addTexts.entryUnder(props.group) : undefined}
              onClick={() => toggle(kind)}>
              {addTexts[kind]}
            </button>
          )}
        </For>
      </p>
      <div id={id} class="own-place">
        <Show when={open()} keyed>
          {(kind) => (
            <Suspense fallback={<p class="quiet">{commonTexts.oneMoment}</p>}>
              <Dynamic component={forms[kind]} group={props.group} close={close} askFor={setOpen} />
            </Suspense>
          )}
        </Show>
      </div>
    </div>
  );
}
