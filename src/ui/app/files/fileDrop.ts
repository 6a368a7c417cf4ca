import { createSignal, onCleanup, onMount, type Accessor } from 'solid-js';

function carriesFiles(event: DragEvent): boolean {
  return event.dataTransfer?.types.includes('Files') === true;
}

/** Calls back with a file that is dropped anywhere on the page; returns whether one hovers over it. */
export function listenForDrop(onFile: (file: File) => void): Accessor<boolean> {
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
    const file = event.dataTransfer?.files[0];
    if (file !== undefined) onFile(file);
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
