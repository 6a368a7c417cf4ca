import { Show, type JSX } from 'solid-js';
import { fileTexts } from '../../../../present/page/fileTexts';
import { commonTexts } from '../../../../present/text/commonTexts';
import { usePage } from '../../../app/pageContext';
import { Link } from '../../../kit/Link';
import { Sentence } from '../../../kit/sections/Sentence';

/** What was last done to an entry, and the way back; it stays in sight as the entry itself may be gone. */
export function SaidLine(): JSX.Element {
  const { changes } = usePage();
  return (
    <div class="said-line" role="status">
      <Show when={changes.sentence()}>
        {(sentence) => (
          <p>
            <Sentence phrase={sentence()} /> <Link onPress={() => changes.takeBack()}>{commonTexts.takeBack}</Link>{' '}
            <Link onPress={() => changes.close()}>{fileTexts.close}</Link>
          </p>
        )}
      </Show>
    </div>
  );
}
