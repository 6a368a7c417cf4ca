import type { JSX } from 'solid-js';
import { isoDate, readIsoDate } from '../../../trade/civilDate';

/** A native date field for a day by its number; an incomplete date changes nothing. */
export function DateField(props: { label: string; day: number; choose: (day: number) => void }): JSX.Element {
  const follow = (text: string): void => {
    const day = readIsoDate(text);
    if (day !== undefined) props.choose(day);
  };
  return (
    <label class="date-field">
      <span class="chooser-label">{props.label}</span>
      <input
        type="date"
        value={isoDate(props.day)}
        min="1900-01-01"
        max="2199-12-31"
        onChange={(event) => follow(event.currentTarget.value)}
      />
    </label>
  );
}
