import { lazy, Show, Suspense, type JSX } from 'solid-js';

const ToldWords = lazy(async () => ({ default: (await import('./ToldWords')).ToldWords }));

/** A text of the model’s file, with today’s figures where it has some in braces. */
export function ToldText(props: { text: string }): JSX.Element {
  return (
    <Show when={props.text.includes('{')} fallback={props.text}>
      <Suspense>
        <ToldWords text={props.text} />
      </Suspense>
    </Show>
  );
}
