import { For, type JSX } from 'solid-js';
import { glossary, wordsOn } from '../../../present/glossary/glossary';
import type { ScreenQuestion } from '../../../present/page/questions';

/** Words with their meaning: those of a screen, or all. */
export function WordList(props: { question?: ScreenQuestion }): JSX.Element {
  return (
    <dl class="word-list">
      <For each={props.question === undefined ? glossary : wordsOn(props.question)}>
        {({ word, means }) => (
          <div>
            <dt>{word}</dt>
            <dd>{means}</dd>
          </div>
        )}
      </For>
    </dl>
  );
}
