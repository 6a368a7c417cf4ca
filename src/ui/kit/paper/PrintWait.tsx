import { createSignal, type Accessor, type JSX } from 'solid-js';
import { render } from 'solid-js/web';
import { paperTexts } from '../../../present/page/paperTexts';
import { Link } from '../Link';
import './atFoot.css';

type Answer = 'now' | 'not';

/** Told to a person while printing waits. */
export interface PrintWait {
  /** What the person chose meanwhile. */
  readonly answer: Accessor<Answer | undefined>;
  readonly close: () => void;
}

/** Says at the foot of the window that printing waits, with ways not to. */
export function openPrintWait(): PrintWait {
  const [answer, setAnswer] = createSignal<Answer>();
  const host = document.createElement('div');
  document.body.append(host);
  const end = render(() => <Told answer={setAnswer} />, host);
  return {
    answer,
    close: () => {
      end();
      host.remove();
    },
  };
}

function Told(props: { answer: (answer: Answer) => void }): JSX.Element {
  return (
    <div class="print-wait" role="status">
      <span>{paperTexts.waiting}</span>
      <Link onPress={() => props.answer('now')}>{paperTexts.now}</Link>
      <Link onPress={() => props.answer('not')}>{paperTexts.not}</Link>
    </div>
  );
}
