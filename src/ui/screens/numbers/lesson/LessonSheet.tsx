import { For, Show, type JSX } from 'solid-js';
import type { Model } from '../../../../model/model';
import type { Values } from '../../../../model/values';
import { titleParts } from '../../../kit/sections/TitleHeading';
import { localFormat } from '../../../app/preferences/localFormat';
import { FigureTable } from './FigureTable';
import { givenFigures, resultFigures } from '../../../../present/lesson/figures';
import type { Lesson, LessonStep } from '../../../../present/lesson/steps';
import { lessonTexts } from '../../../../present/lesson/texts';
import { toldAtOnce } from '../../../../present/told/toldText';
import './styles.css';

export type SheetKind = 'questions' | 'answers';

/** Ruled lines for writing an answer. */
const ruledLines = 4;

interface LessonSheetProps {
  readonly kind: SheetKind;
  readonly lesson: Lesson;
  readonly model: Model;
  readonly values: readonly Values[];
}

/** A lesson as a sheet of paper: the questions with room to write, or with the answers and results. */
export function LessonSheet(props: LessonSheetProps): JSX.Element {
  const parts = (): readonly [string, string] => titleParts(props.lesson.title);
  const plans = (): string[] => props.model.plans.map(({ name }) => name);
  const told = (text: string): string => toldAtOnce(props.model, props.values, text, localFormat);
  const hasFigures = (): boolean => props.lesson.steps.some(({ answer }) => told(answer) !== answer);
  const isAnswers = (): boolean => props.kind === 'answers';
  return (
    <article class="lesson-sheet">
      <header>
        <h1>{parts()[0]}</h1>
        <p class="sheet-subtitle">{isAnswers() ? lessonTexts.answersOf(parts()[1]) : parts()[1]}</p>
        <Show when={!isAnswers()}>
          <p class="sheet-who">
            <span>{lessonTexts.name}</span> <span>{lessonTexts.date}</span>
          </p>
        </Show>
      </header>
      <p>{told(props.lesson.about)}</p>
      <FigureTable
        heading={lessonTexts.given}
        figures={givenFigures(props.model, props.values, localFormat)}
        plans={plans()}
      />
      <h2>{isAnswers() ? lessonTexts.questionsAndAnswers : lessonTexts.questions}</h2>
      <ol class="sheet-steps">
        <For each={props.lesson.steps}>
          {(step) => (
            <li>
              <p class="sheet-question">{told(step.question)}</p>
              <Show when={isAnswers()} fallback={<Ruled />}>
                <p>{told(step.answer)}</p>
              </Show>
            </li>
          )}
        </For>
      </ol>
      <Show when={isAnswers()}>
        <FigureTable
          heading={lessonTexts.results}
          figures={resultFigures(props.model, props.values, localFormat)}
          plans={plans()}
        />
        <Show when={!hasFigures()}>
          <p class="sheet-note">{lessonTexts.whichNumbers}</p>
        </Show>
        <For each={props.lesson.asides}>
          {({ question, answer }) => <Aside question={told(question)} answer={told(answer)} />}
        </For>
      </Show>
    </article>
  );
}

function Ruled(): JSX.Element {
  return (
    <div class="sheet-lines" aria-hidden="true">
      <For each={Array.from({ length: ruledLines })}>{() => <i />}</For>
    </div>
  );
}

function Aside(props: Omit<LessonStep, 'row'>): JSX.Element {
  return (
    <section>
      <h2>{props.question}</h2>
      <p>{props.answer}</p>
    </section>
  );
}
