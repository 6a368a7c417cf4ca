import {
  createEffect,
  createMemo,
  createSignal,
  lazy,
  on,
  onCleanup,
  Show,
  Suspense,
  untrack,
  type Accessor,
  type JSX,
} from 'solid-js';
import { usePage, type PageState } from '../app/pageContext';
import { questionSetting } from '../app/preferences/settings/page';
import type { BackAndForthProps } from './BackAndForth';

/** Loads with the first step from one place to another. */
const BackAndForth = lazy(async () => ({ default: (await import('./BackAndForth')).BackAndForth }));

/** Whether the browser's history has to do with places of the program yet. */
function createMoved({ store, navigation }: PageState, more: readonly Accessor<unknown>[]): Accessor<boolean> {
  const [moved, setMoved] = createSignal(location.hash !== '' || history.state !== null);
  const move = (): void => {
    setMoved(true);
  };
  createEffect(on([store.origin, navigation.jumped, ...more], move, { defer: true }));
  addEventListener('popstate', move);
  onCleanup(() => removeEventListener('popstate', move));
  return moved;
}

/** The browser's Back and Forward within the program. */
export function Places(props: Omit<BackAndForthProps, 'first'>): JSX.Element {
  const page = usePage();
  const question = createMemo(() => page.choice.get(questionSetting));
  const moved = createMoved(page, [() => question(), () => props.shelf[0]()]);
  const first = untrack(() => [question(), props.side[0](), props.keeper.id()] as const);
  return (
    <Show when={moved()}>
      <Suspense>
        <BackAndForth {...props} first={first} />
      </Suspense>
    </Show>
  );
}
