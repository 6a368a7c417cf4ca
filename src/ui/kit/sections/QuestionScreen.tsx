import type { JSX } from 'solid-js';

interface QuestionScreenProps {
  /** Its class and the id of its heading. */
  readonly name: string;
  readonly heading: string;
  readonly children: JSX.Element;
}

/** The screen of a question, under a heading for those who do not see which one is pressed. */
export function QuestionScreen(props: QuestionScreenProps): JSX.Element {
  return (
    <section class={`question-screen ${props.name}`} aria-labelledby={props.name}>
      <h2 class="heard" id={props.name}>
        {props.heading}
      </h2>
      {props.children}
    </section>
  );
}
