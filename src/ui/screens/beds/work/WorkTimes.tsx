import { For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import { localFormat } from '../../../app/preferences/localFormat';
import type { Values } from '../../../../model/values';
import type { CropNames } from '../../../../present/beds/stageNames';
import {
  countedOptions,
  timesExplained,
  type CountedAt,
  type TimeEntry,
} from '../../../../present/beds/work/stepTimes';
import { labelWithNumber } from '../../../../present/beds/work/labelWithNumber';
import { timesTexts } from '../../../../present/beds/work/timesTexts';

interface WorkTimesProps {
  readonly entries: readonly TimeEntry[];
  readonly at: readonly CountedAt[];
  readonly names: CropNames;
  readonly allowance: Cell | undefined;
  readonly values: Values | undefined;
  readonly choose: (entry: TimeEntry, at: string) => void;
}

/** The choice of the entries from which the hours are computed. */
export function WorkTimes(props: WorkTimesProps): JSX.Element {
  return (
    <details class="work-times">
      <summary>{timesTexts.heading}</summary>
      <Show when={props.entries.length > 0} fallback={<p>{timesTexts.noEntries}</p>}>
        <p class="quiet">{timesExplained(props.allowance)}</p>
        <For each={props.entries}>
          {(entry, i) => (
            <label class="work-time">
              <span>{labelWithNumber(entry.cell, props.values, localFormat)}</span>
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
