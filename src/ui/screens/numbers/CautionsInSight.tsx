import { createMemo, createSignal, lazy, onCleanup, onMount, Show, Suspense, type JSX } from 'solid-js';
import type { CautionTopic } from '../../../present/page/cautions';
import { createSight } from '../../kit/sections/sight';

const Cautions = lazy(async () => ({ default: (await import('../../kit/sections/Cautions')).Cautions }));

/**
 * Cautions at the end of a long page. They load once they come into sight, or with the first press of a key or of the
 * pointer, so that they are there before anybody can print.
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
    const kinds = ['keydown', 'pointerdown'] as const;
    for (const kind of kinds) addEventListener(kind, touch, { once: true, passive: true });
    onCleanup(() => kinds.forEach((kind) => removeEventListener(kind, touch)));
  });
  return (
    <div
      class="cautions-place"
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
