import type { JSX } from 'solid-js';
import { questionLabel, type ScreenQuestion } from '../../../present/page/questions';
import { commonTexts } from '../../../present/text/commonTexts';
import { PrintWord } from '../paper/PrintWord';
import { WordsHere } from './WordsHere';

interface QuestionScreenProps {
  readonly question: Exclude<ScreenQuestion, 'method'>;
  /** The word that prints it, where it is not the usual one. */
  readonly print?: string;
  readonly children: JSX.Element;
}

/**
 * The screen of a question, under a heading for those who do not see which one is pressed. Its class and the id of its
 * heading are the question's key.
 */
export function QuestionScreen(props: QuestionScreenProps): JSX.Element {
  const name = (): string => props.question.replaceAll(' ', '-');
  return (
    <section class={`question-screen ${name()}`} aria-labelledby={name()}>
      <h2 class="heard" id={name()}>
        {questionLabel(props.question)}
      </h2>
      {props.children}
      <PrintWord part="question">{props.print ?? commonTexts.printQuestion}</PrintWord>
      <WordsHere question={props.question} />
    </section>
  );
}
