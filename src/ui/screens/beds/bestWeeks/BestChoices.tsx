import { Show, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import type { Way } from '../../../../study/best';
import { boardsOf, type CropNames } from '../../../../present/beds/stageNames';
import type { EntryGroup } from '../../../../present/results/entryGroups';
import { RadioRow } from '../../../kit/choosers/RadioRow';
import { EntryChooser } from '../../../kit/choosers/EntryChooser';
import {
  bestDensitySetting,
  bestStageSetting,
  bestTimeSetting,
  bestWaySetting,
  heldTimeSetting,
} from '../../../app/preferences/settings/bestWeeks';
import type { Choice } from '../../../app/screenProps';
import type { Chosen, HeldTime, StageOption } from '../../../../present/beds/bestWeeks/options';
import { bestWeeksTexts } from '../../../../present/beds/bestWeeks/texts';
import { commonTexts } from '../../../../present/text/commonTexts';

interface BestChoicesProps {
  readonly choice: Choice;
  readonly groups: readonly EntryGroup[];
  readonly result: Cell;
  readonly options: readonly StageOption[];
  readonly picked: Chosen;
  readonly way: Way;
  readonly names: CropNames;
  /** Name of the plan. */
  readonly plan: string;
  /** Whether the difference from another plan can be shown. */
  readonly canCompare: boolean;
  /** Whether that difference is shown. */
  readonly isCompared: boolean;
}

/** The choices of the best weeks: the result, the stage, the entries that move, and which time stays the same. */
export function BestChoices(props: BestChoicesProps): JSX.Element {
  const boards = (stage: number): string => boardsOf(props.names, stage - 1).many;
  const heldOptions = (): readonly { readonly value: HeldTime; readonly label: string }[] => [
    { value: 'total', label: bestWeeksTexts.totalStays },
    { value: 'next', label: bestWeeksTexts.nextStays(boards(props.picked.option.stage + 1)) },
  ];
  return (
    <>
      <BestEntries {...props} />
      <Show when={props.canCompare}>
        <RadioRow
          legend={bestWeeksTexts.whose}
          chosen={props.isCompared ? 'difference' : 'plan'}
          choose={(whose) => props.choice.setWhose(whose)}
          options={[
            { value: 'difference', label: commonTexts.difference },
            { value: 'plan', label: commonTexts.planOf('B', props.plan) },
          ]}
        />
      </Show>
      <Show when={props.options.length > 1}>
        <RadioRow
          legend={bestWeeksTexts.stage}
          chosen={String(props.picked.option.stage)}
          choose={(stage) => props.choice.set(bestStageSetting, Number(stage))}
          options={props.options.map(({ stage }) => ({ value: String(stage), label: boards(stage) }))}
        />
      </Show>
      <Show when={props.picked.time.canHoldTotal}>
        <RadioRow
          legend={bestWeeksTexts.held}
          options={heldOptions()}
          chosen={props.picked.held}
          choose={(held) => props.choice.set(heldTimeSetting, held)}
        />
      </Show>
      <RadioRow
        legend={bestWeeksTexts.way}
        options={[
          { value: 'highest', label: bestWeeksTexts.highest },
          { value: 'lowest', label: bestWeeksTexts.lowest },
        ]}
        chosen={props.way}
        choose={(way) => props.choice.set(bestWaySetting(props.result.name), way)}
      />
    </>
  );
}

/** The choice of the result, and of the entries that move where there are several. */
function BestEntries(props: BestChoicesProps): JSX.Element {
  return (
    <div class="asking">
      <EntryChooser
        label={commonTexts.result}
        groups={props.groups}
        chosen={props.result.name}
        choose={(name) => props.choice.setResult(name)}
      />
      <Show when={props.picked.option.times.length > 1}>
        <EntryChooser
          label={bestWeeksTexts.timeBy}
          groups={[{ heading: bestWeeksTexts.time, cells: props.picked.option.times.map(({ cell }) => cell) }]}
          chosen={props.picked.time.cell.name}
          choose={(name) => props.choice.set(bestTimeSetting, name)}
        />
      </Show>
      <Show when={props.picked.option.densities.length > 1}>
        <EntryChooser
          label={bestWeeksTexts.densityBy}
          groups={[{ heading: bestWeeksTexts.density, cells: props.picked.option.densities }]}
          chosen={props.picked.density.name}
          choose={(name) => props.choice.set(bestDensitySetting, name)}
        />
      </Show>
    </div>
  );
}
