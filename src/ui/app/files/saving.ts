import { writeTable } from '../../../files/writeTable';
import type { ModelStore } from '../store/modelStore';

/** The text of the model's file as it is now; where nothing changed, exactly the bytes that were opened. */
export function fileText(store: ModelStore): string {
  return writeTable(store.origin().file, store.model().sheet);
}

/** Gives the browser a file to save. */
export function downloadBlob(name: string, content: Blob): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // A browser may read the address only after the click has been handled.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** Gives the browser a text to save as a file in UTF-8. */
export function download(name: string, text: string, type = 'text/csv'): void {
  downloadBlob(name, new Blob([text], { type: `${type};charset=utf-8` }));
}
