import { Index, Show, type JSX } from 'solid-js';
import type { LinkedPhrase } from '../../../present/text/linkedPhrase';
import type { Phrase } from '../../../present/text/phrase';
import { Link } from '../Link';
import { Sentence } from './Sentence';

/** A phrase with a link in it. */
export function LinkedSentence(props: { phrase: LinkedPhrase; onPress: () => void }): JSX.Element {
  return (
    <Index each={props.phrase}>
      {(part) => {
        const plain = (): Phrase => {
          const piece = part();
          return 'link' in piece ? [] : [piece];
        };
        return (
          <Show when={'link' in part()} fallback={<Sentence phrase={plain()} />}>
            <Link onPress={() => props.onPress()}>{part().text}</Link>
          </Show>
        );
      }}
    </Index>
  );
}
