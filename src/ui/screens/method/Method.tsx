import { createEffect, For, lazy, Match, Show, Suspense, Switch, type JSX } from 'solid-js';
import type { Choice } from '../../app/screenProps';
import { Waiting } from '../../kit/sections/Waiting';
import { PrintWord } from '../../kit/paper/PrintWord';
import { Link } from '../../kit/Link';
import { chapters } from '../../../present/method/chapters';
import type { Entry } from '../../../present/method/entry';
import { formulaPieces } from '../../../present/method/formulaPieces';
import { leaveMethod, methodEntry, methodFrom } from '../../kit/method/methodPlace';
import { backText } from '../../../present/method/backText';
import { formulaHelpEntry, formulaHelpTexts } from '../../../present/formulaHelp/texts';
import { glossaryEntry, glossaryHeading } from '../../../present/glossary/glossary';
import { WordList } from '../../kit/sections/WordList';
import { commonTexts } from '../../../present/text/commonTexts';
import { methodTexts } from '../../../present/method/texts';
import './styles.css';

const FormulaHelp = lazy(async () => ({ default: (await import('./FormulaHelp')).FormulaHelpPage }));

function anchorOf(entry: string): string {
  return `method-${entry.replaceAll(' ', '-')}`;
}

/** How every figure of the app is computed, from which source, and what it cannot do. */
export function Method(props: { choice: Choice }): JSX.Element {
  let page: HTMLElement | undefined;
  let top: HTMLHeadingElement | undefined;
  const back = (): string => backText(methodFrom(props.choice));
  const goTo = (entry: string): void => {
    const target = entry === '' ? top : page?.querySelector<HTMLElement>(`#${anchorOf(entry)}`);
    target?.scrollIntoView();
    target?.focus({ preventScroll: true });
  };
  createEffect(() => {
    const entry = methodEntry(props.choice);
    queueMicrotask(() => goTo(entry));
  });
  return (
    <section class="method" aria-labelledby="method" ref={page}>
      <p class="method-back">
        <Link onPress={() => leaveMethod(props.choice)}>{back()}</Link>
      </p>
      <h2 id="method" tabindex="-1" ref={top}>
        {methodTexts.heading}
      </h2>
      <p>{methodTexts.about}</p>
      <Contents goTo={goTo} />
      <For each={chapters}>
        {({ heading, entries }) => (
          <section>
            <h3>{heading}</h3>
            <For each={entries}>{(entry) => <MethodText {...entry} />}</For>
          </section>
        )}
      </For>
      <section>
        <h3 id={anchorOf(glossaryEntry)} tabindex="-1">
          {glossaryHeading}
        </h3>
        <WordList />
      </section>
      <section>
        <h3 id={anchorOf(formulaHelpEntry)} tabindex="-1">
          {formulaHelpTexts.heading}
        </h3>
        <p>{formulaHelpTexts.about}</p>
        <Suspense fallback={<Waiting>{commonTexts.oneMoment}</Waiting>}>
          <FormulaHelp />
        </Suspense>
      </section>
      <p class="method-back">
        <Link onPress={() => leaveMethod(props.choice)}>{back()}</Link>
      </p>
      <PrintWord part="question">{methodTexts.print}</PrintWord>
    </section>
  );
}

/** The contents of the page, as links. */
function Contents(props: { goTo: (entry: string) => void }): JSX.Element {
  return (
    <nav class="method-contents" aria-label={methodTexts.contents}>
      <For each={chapters}>
        {({ heading, entries }) => (
          <div>
            <h3>{heading}</h3>
            <ul>
              <For each={entries}>
                {({ id, what }) => (
                  <li>
                    <Link onPress={() => props.goTo(id)}>{what}</Link>
                  </li>
                )}
              </For>
            </ul>
          </div>
        )}
      </For>
      <div>
        <h3>
          <Link onPress={() => props.goTo(glossaryEntry)}>{glossaryHeading}</Link>
        </h3>
        <h3>
          <Link onPress={() => props.goTo(formulaHelpEntry)}>{formulaHelpTexts.heading}</Link>
        </h3>
      </div>
    </nav>
  );
}

function MethodText(props: Entry): JSX.Element {
  return (
    <article>
      <h4 id={anchorOf(props.id)} tabindex="-1">
        {props.what}
      </h4>
      <p>{props.how}</p>
      <Show when={props.formulas}>
        {(lines) => (
          <ul class="method-formulas">
            <For each={lines()}>
              {(line) => (
                <li>
                  <Formula line={line} />
                </li>
              )}
            </For>
          </ul>
        )}
      </Show>
      <dl>
        <Show when={props.design}>
          <dt>{methodTexts.design}</dt>
          <dd>{props.design}</dd>
        </Show>
        <dt>{methodTexts.source}</dt>
        <dd>{props.source}</dd>
        <dt>{methodTexts.limits}</dt>
        <dd>{props.limits}</dd>
        <dt>{methodTexts.where}</dt>
        <dd>{props.where}</dd>
      </dl>
    </article>
  );
}

function Formula(props: { line: string }): JSX.Element {
  return (
    <For each={formulaPieces(props.line)}>
      {({ kind, text }) => (
        <Switch fallback={text}>
          <Match when={kind === 'quantity'}>
            <var>{text}</var>
          </Match>
          <Match when={kind === 'low'}>
            <sub>{text}</sub>
          </Match>
          <Match when={kind === 'high'}>
            <sup>{text}</sup>
          </Match>
        </Switch>
      )}
    </For>
  );
}
