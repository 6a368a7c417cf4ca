import { createMemo, Show, Suspense, type Accessor, type JSX } from 'solid-js';
import { createSight } from './sight';
import { Waiting } from './Waiting';
import { commonTexts } from '../../../present/text/commonTexts';
import './section.css';

interface PartProps {
  /** Id of its heading. */
  readonly id: string;
  readonly heading: string;
  readonly class?: string;
  /** @param inSight whether the section is in sight now */
  readonly children: (inSight: Accessor<boolean>) => JSX.Element;
}

/** A section of a screen under its own heading, loaded and made when it first comes into sight. */
export function LazySection(props: PartProps): JSX.Element {
  let section: HTMLElement | undefined;
  const inSight = createSight(() => section);
  const seen = createMemo((before: boolean) => before || inSight(), false);
  return (
    <section class={`part ${props.class ?? ''}`} aria-labelledby={props.id} ref={section}>
      <h3 id={props.id}>{props.heading}</h3>
      <Show when={seen()} fallback={<Waiting class="wait" />}>
        <Suspense fallback={<Waiting class="quiet wait">{commonTexts.oneMoment}</Waiting>}>
          {props.children(inSight)}
        </Suspense>
      </Show>
    </section>
  );
}
