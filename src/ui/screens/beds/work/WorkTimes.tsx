import { For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import { localFormat } from '../../../app/preferences/localFormat';
import type { Values } from '../../../../model/values';
import type { CropNames } from '../../../../trade/stageNames';
import { countedOptions, type CountedAt, type TimeEntry } from '../../../../present/beds/work/stepTimes';

interface WorkTimesProps {
  readonly entries: readonly TimeEntry[];
  readonly at: readonly CountedAt[];
  readonly names: CropNames;
  readonly allowance: Cell | undefined;
  readonly values: Values | undefined;
  readonly choose: (entry: TimeEntry, at: string) => void;
}

/** Which entries make the hours. */
export function WorkTimes(props: WorkTimesProps): JSX.Element {
  const value = ({ cell }: TimeEntry): string => {
    const number = props.values?.numbers[cell.id];
    return number === undefined ? '' : localFormat.withUnit(number, cell.unit);
  };
  return (
    <details class="work-times">
      <summary>What the hours are made of</summary>
      <Show
        when={props.entries.length > 0}
        fallback={<p>No entry is a time for each plant or board, such as s/plant, so no hours are counted.</p>}>
        <p class="quiet">
          Taken from the words of the entries until you choose; paid for every plant that enters a step.{' '}
          {props.allowance === undefined ? 'No allowance is added.' : `${props.allowance.label} is added.`}
        </p>
        <For each={props.entries}>
          {(entry, i) => (
            <label class="work-time">
              <span>
                {entry.cell.label}, {value(entry)}
              </span>
              <select onChange={(event) => props.choose(entry, event.currentTarget.value)}>
                <For each={countedOptions(props.names)}>
                  {(option) => (
                    <option value={option.value} selected={option.value === props.at[i()]}>
                      {option.label}
                    </option>
                  )}
                </For>
              </select>
            </label>
          )}
        </For>
      </Show>
    </details>
  );
}
