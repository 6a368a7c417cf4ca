import { For, Show, type JSX } from 'solid-js';
import { numberToText } from '../../../../core/number';
import { moreText } from '../../../../present/theCase/years/fields';
import { outlaySources, refusedRate, yearLimits, type OutlayEntry } from '../../../../present/theCase/years/terms';
import { yearsTexts } from '../../../../present/theCase/years/texts';
import { localFormat } from '../../../app/preferences/localFormat';
import { RadioRow } from '../../../kit/choosers/RadioRow';
import { NumberField } from '../../../kit/fields/NumberField';
import { WholeField } from '../../../kit/fields/WholeField';
import type { YearsProps } from '../yearsProps';
import '../../../kit/fields/fields.css';

interface FieldsProps extends Pick<YearsProps, 'made' | 'beside' | 'settings'> {
  /** What can be named as the outlay. */
  readonly entries: readonly OutlayEntry[];
}

/** The outlay, typed or named, and the years, the interest and the value left. */
export function YearsFields(props: FieldsProps): JSX.Element {
  const terms = (): ReturnType<FieldsProps['settings']['terms']> => props.settings.terms();
  const isTyped = (): boolean => props.entries.length === 0 || terms().source === 'typed';
  return (
    <div class="years-fields writing">
      <Show when={props.entries.length > 0}>
        <RadioRow
          legend={yearsTexts.source}
          options={outlaySources.map((value) => ({ value, label: yearsTexts.sources[value] }))}
          chosen={terms().source}
          choose={props.settings.setSource}
        />
      </Show>
      <Show when={!isTyped()}>
        <Bought {...props} />
      </Show>
      <Show when={isTyped()}>
        <div class="settings">
          <NumberField
            label={yearsTexts.outlay}
            unit={props.made.currency}
            text={terms().typed === undefined ? '' : numberToText(terms().typed!)}
            onNumber={props.settings.setOutlay}
          />
        </div>
      </Show>
      <Show when={props.settings.isGiven()}>
        <OutlayEnds {...props} />
      </Show>
      <div class="settings">
        <WholeField
          label={yearsTexts.years}
          number={terms().years}
          limits={yearLimits}
          onNumber={props.settings.setYears}
        />
        <NumberField
          label={yearsTexts.rate}
          unit={yearsTexts.rateUnit}
          text={numberToText(terms().percent)}
          refuse={refusedRate}
          onNumber={props.settings.setRate}
        />
        <NumberField
          label={yearsTexts.left}
          unit={props.made.currency}
          text={numberToText(terms().left)}
          onNumber={props.settings.setLeft}
        />
        <Show when={props.settings.isGiven()}>
          <button type="button" class="link" onClick={() => props.settings.leaveOut()}>
            {yearsTexts.none}
          </button>
        </Show>
      </div>
    </div>
  );
}

/** Between what the outlay may come to. */
function OutlayEnds(props: FieldsProps): JSX.Element {
  const end = (which: 'low' | 'high'): string => {
    const amount = props.settings.terms()[which];
    return amount === undefined ? '' : numberToText(amount);
  };
  const isGiven = (): boolean => end('low') !== '' || end('high') !== '';
  return (
    <div class="settings">
      <For each={['low', 'high'] as const}>
        {(which) => (
          <NumberField
            label={yearsTexts[which]}
            unit={props.made.currency}
            text={end(which)}
            onNumber={(text) => props.settings.setEnd(which, text)}
          />
        )}
      </For>
      <Show when={isGiven()}>
        <button type="button" class="link" onClick={() => props.settings.makeCertain()}>
          {yearsTexts.certain}
        </button>
      </Show>
    </div>
  );
}

/** The entries in money, each with its difference between the plans, to be ticked where it is bought. */
function Bought(props: FieldsProps): JSX.Element {
  const has = (name: string): boolean => props.settings.terms().entries.includes(name);
  const change = (name: string, wanted: boolean): void =>
    props.settings.setEntries(
      props.entries.map(({ cell }) => cell.name).filter((one) => (one === name ? wanted : has(one))),
    );
  return (
    <fieldset class="bought">
      <legend class="choices-legend">{yearsTexts.entries}</legend>
      <For each={props.entries}>
        {(entry) => (
          <label class="check-choice">
            <input
              type="checkbox"
              checked={has(entry.cell.name)}
              onChange={(event) => change(entry.cell.name, event.currentTarget.checked)}
            />
            <span>
              {props.beside.nameOf(entry.cell)} <span class="unit">{moreText(entry, props.made, localFormat)}</span>
            </span>
          </label>
        )}
      </For>
    </fieldset>
  );
}
