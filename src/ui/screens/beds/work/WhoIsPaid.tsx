import { For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import type { Values } from '../../../../model/values';
import type { Staff } from '../../../../trade/labour';
import { localFormat } from '../../../app/preferences/localFormat';
import { isChosen, staffParts, type StaffChoice, type StaffPart } from '../../../../present/beds/work/staffHours';
import { labelWithNumber } from '../../../../present/beds/work/labelWithNumber';
import { staffTexts } from '../../../../present/beds/work/staffTexts';

interface WhoIsPaidProps {
  readonly entries: readonly Cell[];
  readonly choice: StaffChoice;
  readonly beyond: Staff['beyond'];
  readonly values: Values | undefined;
  readonly choose: (part: StaffPart, name: string) => void;
  readonly chooseBeyond: (beyond: string) => void;
}

/** The choice of the entries that hold staff hours and hours guaranteed. */
export function WhoIsPaid(props: WhoIsPaidProps): JSX.Element {
  return (
    <details class="work-times" open={!isChosen(props.choice) && props.entries.length > 0}>
      <summary>{staffTexts.heading}</summary>
      <Show when={props.entries.length > 0} fallback={<p>{staffTexts.noEntries}</p>}>
        <p class="quiet">{staffTexts.rule}</p>
        <For each={staffParts}>
          {({ part, label }) => (
            <label class="work-time">
              <span>{label}</span>
              <select onChange={(event) => props.choose(part, event.currentTarget.value)}>
                <Show when={props.choice[part] === ''}>
                  <option value="" selected>
                    {staffTexts.choose}
                  </option>
                </Show>
                <option value="none" selected={props.choice[part] === 'none'}>
                  {staffTexts.none}
                </option>
                <For each={props.entries}>
                  {(cell) => (
                    <option value={cell.name} selected={cell.name === props.choice[part]}>
                      {labelWithNumber(cell, props.values, localFormat)}
                    </option>
                  )}
                </For>
              </select>
            </label>
          )}
        </For>
        <label class="work-time">
          <span>{staffTexts.beyond}</span>
          <select onChange={(event) => props.chooseBeyond(event.currentTarget.value)}>
            <option value="overtime" selected={props.beyond === 'overtime'}>
              {staffTexts.overtime}
            </option>
            <option value="second hire" selected={props.beyond === 'second hire'}>
              {staffTexts.secondHire}
            </option>
          </select>
        </label>
      </Show>
    </details>
  );
}
