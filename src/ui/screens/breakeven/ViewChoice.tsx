import { createMemo, Show, type JSX } from 'solid-js';
import { breakevenTexts } from '../../../present/breakeven/texts';
import type { LineView } from '../../../present/breakeven/view';
import type { Option } from '../../../present/text/option';
import { RadioRow } from '../../kit/choosers/RadioRow';
import type { BreakevenSettings } from './settings';

const { views, furtherViews } = breakevenTexts;

const ofTwo: readonly Option<LineView | 'all'>[] = [
  { value: 'both', label: views.both },
  { value: 'difference', label: views.difference },
];
const ofMore: readonly Option<LineView | 'all'>[] = [
  { value: 'all', label: furtherViews.all },
  { value: 'both', label: furtherViews.both },
  { value: 'difference', label: views.difference },
];

/** The choice between both plans and their difference, and all plans where there are more; nothing for one plan. */
export function ViewChoice(props: { settings: BreakevenSettings; legend: string }): JSX.Element {
  const options = createMemo(() => (props.settings.hasFurther() ? ofMore : ofTwo));
  return (
    <Show when={props.settings.view() !== 'alone'}>
      <RadioRow
        legend={props.legend}
        options={options()}
        chosen={props.settings.isAll() ? 'all' : props.settings.view()}
        choose={(view) => props.settings.setView(view)}
      />
    </Show>
  );
}
