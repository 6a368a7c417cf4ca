import { For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import type { Values } from '../../../../model/values';
import type { Staff } from '../../../../trade/labour';
import { localFormat } from '../../../app/preferences/localFormat';
import { isChosen, staffParts, type StaffChoice, type StaffPart } from '../../../../present/beds/work/staffHours';

interface WhoIsPaidProps {
  readonly entries: readonly Cell[];
  readonly choice: StaffChoice;
  readonly beyond: Staff['beyond'];
  readonly values: Values | undefined;
  readonly choose: (part: StaffPart, name: string) => void;
  readonly chooseBeyond: (beyond: string) => void;
}

/** Which entries say who is there and what is promised. */
export function WhoIsPaid(props: WhoIsPaidProps): JSX.Element {
  const sentence = (cell: Cell): string => {
    const number = props.values?.numbers[cell.id];
    return number === undefined ? cell.label : `${cell.label}, ${localFormat.withUnit(number, cell.unit)}`;
  };
  return (
    <details class="work-times" open={!isChosen(props.choice) && props.entries.length > 0}>
      <summary>Whose hours are paid</summary>
      <Show
        when={props.entries.length > 0}
        fallback={<p>No input is in hours a week, such as h/week, so only the hours needed are counted.</p>}>
        <p class="quiet">
          In each week a hire is paid for the hours that the present staff cannot cover, or for the hours guaranteed,
          whichever is more. Taken from the words of the entries until you choose.
        </p>
        <For each={staffParts}>
          {({ part, label }) => (
            <label class="work-time">
              <span>{label}</span>
              <select onChange={(event) => props.choose(part, event.currentTarget.value)}>
                <Show when={props.choice[part] === ''}>
                  <option value="" selected>
                    choose an entry, or none
                  </option>
                </Show>
                <option value="none" selected={props.choice[part] === 'none'}>
                  none
                </option>
                <For each={props.entries}>
                  {(cell) => (
                    <option value={cell.name} selected={cell.name === props.choice[part]}>
                      {sentence(cell)}
                    </option>
                  )}
                </For>
              </select>
            </label>
          )}
        </For>
        <label class="work-time">
          <span>Beyond one person’s hours</span>
          <select onChange={(event) => props.chooseBeyond(event.currentTarget.value)}>
            <option value="overtime" selected={props.beyond === 'overtime'}>
              overtime
            </option>
            <option value="second hire" selected={props.beyond === 'second hire'}>
              a second hire, as much guaranteed
            </option>
          </select>
        </label>
      </Show>
    </details>
  );
}
