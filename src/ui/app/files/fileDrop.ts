import { createSignal, onCleanup, onMount, type Accessor } from 'solid-js';

function carriesFiles(event: DragEvent): boolean {
  return event.dataTransfer?.types.includes('Files') === true;
}

/** Calls back with files that are dropped anywhere on the page; returns whether some hover over it. */
export function listenForDrop(onFiles: (files: readonly File[]) => void): Accessor<boolean> {
  const [hovering, setHovering] = createSignal(false);
  const onOver = (event: DragEvent): void => {
    if (!carriesFiles(event)) return;
    event.preventDefault();
    setHovering(true);
  };
  const onLeave = (event: DragEvent): void => {
    if (event.relatedTarget === null) setHovering(false);
  };
  const onDrop = (event: DragEvent): void => {
    if (!carriesFiles(event)) return;
    event.preventDefault();
    setHovering(false);
    onFiles([...(event.dataTransfer?.files ?? [])]);
  };
  onMount(() => {
    const ending = new AbortController();
    const { signal } = ending;
    document.addEventListener('dragenter', onOver, { signal });
    document.addEventListener('dragover', onOver, { signal });
    document.addEventListener('dragleave', onLeave, { signal });
    document.addEventListener('drop', onDrop, { signal });
    onCleanup(() => ending.abort());
  });
  return hovering;
}
