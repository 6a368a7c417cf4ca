import { createMemo, createSignal, onCleanup, onMount, Show, type JSX } from 'solid-js';
import { usePage } from '../../app/pageContext';

interface LazyRowsProps {
  /** Numbers of the first and the last row. */
  readonly first: number;
  readonly last: number;
  readonly count: number;
  readonly children: JSX.Element;
}

/** Height of a usual row in pixels, by which room is kept for rows that are not on the page. */
const usualHeight = 40;

/** Rows that are put on the page when they come near the screen, when a jump leads to one of them, and for print. */
export function LazyRows(props: LazyRowsProps): JSX.Element {
  const { navigation, printing } = usePage();
  const [near, setNear] = createSignal(false);
  const [height, setHeight] = createSignal(0);
  let room: HTMLLIElement | undefined;
  const wanted = createMemo(() => {
    const row = navigation.wanted();
    return row !== undefined && row >= props.first && row <= props.last;
  });
  const here = (): boolean => near() || wanted() || printing();
  onMount(() => {
    const watcher = new IntersectionObserver(
      ([entry]) => {
        if (entry === undefined) return;
        if (!entry.isIntersecting && near()) setHeight(entry.boundingClientRect.height);
        setNear(entry.isIntersecting);
      },
      { rootMargin: '1200px 0px' },
    );
    if (room !== undefined) watcher.observe(room);
    onCleanup(() => watcher.disconnect());
  });
  return (
    <li
      class="lazy"
      ref={(item) => {
        room = item;
      }}
      style={{ 'min-height': here() ? undefined : `${height() || props.count * usualHeight}px` }}>
      <Show when={here()}>
        <ul class="entries">{props.children}</ul>
      </Show>
    </li>
  );
}
