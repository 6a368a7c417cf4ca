import type { JSX } from 'solid-js';

interface FilePickerProps {
  /** The text of the button. */
  readonly label: string;
  readonly onFile: (file: File) => void;
}

/** A button with which a person picks a CSV file; the same file can be picked again. */
export function FilePicker(props: FilePickerProps): JSX.Element {
  let picker: HTMLInputElement | undefined;
  const pick = (): void => {
    const file = picker?.files?.[0];
    if (file !== undefined) props.onFile(file);
    if (picker !== undefined) picker.value = '';
  };
  return (
    <>
      <button type="button" class="word" onClick={() => picker?.click()}>
        {props.label}
      </button>
      <input
        type="file"
        class="heard"
        tabindex="-1"
        aria-hidden="true"
        accept=".csv,text/csv,text/plain"
        ref={picker}
        onChange={pick}
      />
    </>
  );
}
