import { createMemo, createSignal, lazy, onCleanup, onMount, Show, Suspense, type JSX } from 'solid-js';
import type { CautionTopic } from '../../../present/page/cautions';
import { createSight } from '../../kit/sections/sight';

const Cautions = lazy(async () => ({ default: (await import('../../kit/sections/Cautions')).Cautions }));

/**
 * Cautions at the end of a long page. They load once they come into sight, or with the first key, scrolling or press,
 * so that they are there before anybody can print. Their room is kept for them: what stands below does not move.
 */
export function CautionsInSight(props: { topics: readonly CautionTopic[] }): JSX.Element {
  let place: HTMLElement | undefined;
  const inSight = createSight(() => place);
  const [touched, setTouched] = createSignal(false);
  const wanted = createMemo((before: boolean) => before || inSight() || touched(), false);
  onMount(() => {
    const touch = (): void => {
      setTouched(true);
    };
    // Not while the pointer is pressed: what moves then is missed by it.
    const kinds = ['keydown', 'scroll', 'pointerup'] as const;
    for (const kind of kinds) addEventListener(kind, touch, { once: true, passive: true });
    onCleanup(() => kinds.forEach((kind) => removeEventListener(kind, touch)));
  });
  return (
    <div
      class="cautions-place"
      style={{ '--cautions': props.topics.length }}
      ref={(element) => {
        place = element;
      }}>
      <Show when={wanted()}>
        <Suspense>
          <Cautions topics={props.topics} />
        </Suspense>
      </Show>
    </div>
  );
}
