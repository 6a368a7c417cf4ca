import type { JSX } from 'solid-js';

interface FilePickerProps {
  /** The text of the button. */
  readonly label: string;
  /** Whether several files can be picked at once. */
  readonly several?: boolean;
  readonly onFiles: (files: readonly File[]) => void;
}

/** A button with which a person picks CSV files or live pages; the same file can be picked again. */
export function FilePicker(props: FilePickerProps): JSX.Element {
  let picker: HTMLInputElement | undefined;
  const pick = (): void => {
    props.onFiles([...(picker?.files ?? [])]);
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
        multiple={props.several === true}
        accept=".csv,.html,text/csv,text/plain,text/html"
        ref={picker}
        onChange={pick}
      />
    </>
  );
}
