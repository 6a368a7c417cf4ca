import { batch, createMemo, type Accessor } from 'solid-js';
import { decimal, type Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import { possibleRange } from '../../../study/searchRange';
import { localFormat } from '../../app/preferences/localFormat';
import {
  differenceTargetSetting,
  drawnPlansSetting,
  lineViewSetting,
  rangeEndSetting,
  targetSetting,
} from '../../app/preferences/settings/breakeven';
import type { Setting } from '../../app/preferences/settings/setting';
import type { Choice } from '../../app/screenProps';
import type { ResultLines } from '../../../present/results/resultLines';
import type { LineSelection, Targets } from '../../../present/breakeven/curve/quickStudy';
import { shownRange, zero, type ShownRange } from '../../../present/breakeven/range';
import { linesOfView, lineViewOf, type LineView } from '../../../present/breakeven/view';

/** The settings of a breakeven question. */
export interface BreakevenSettings {
  readonly view: Accessor<LineView>;
  /** Whether the model has plans beside the two compared. */
  readonly hasFurther: Accessor<boolean>;
  /** Whether the lines of all of them are drawn. */
  readonly isAll: Accessor<boolean>;
  readonly selection: Accessor<LineSelection>;
  /** The target that can be set: that of each plan, or of the difference in the view that shows it. */
  readonly target: Accessor<Decimal>;
  readonly targets: Accessor<Targets>;
  readonly range: Accessor<ShownRange>;
  setView(view: LineView | 'all'): void;
  setTarget(text: string): void;
  /** Sets an end of the range; blank goes back to the usual one. */
  setEnd(end: 'from' | 'to', text: string): void;
}

interface SettingsProps {
  readonly choice: Choice;
  readonly result: Cell;
  readonly input: Cell;
  readonly lines: ResultLines;
  /** Whether the model has plans beside the two compared. */
  readonly hasFurther: boolean;
}

/** The settings, kept among the choices: targets by result, ranges by input. */
export function createBreakevenSettings(props: SettingsProps): BreakevenSettings {
  const view = createMemo(() => lineViewOf(props.choice.get(lineViewSetting), props.lines));
  const isAll = createMemo(() => {
    const usual = view() === 'difference' ? 'two' : 'all';
    return props.hasFurther && (props.choice.get(drawnPlansSetting) ?? usual) === 'all';
  });
  const setView = (chosen: LineView | 'all'): void =>
    batch(() => {
      if (props.hasFurther) props.choice.set(drawnPlansSetting, chosen === 'all' ? 'all' : 'two');
      if (chosen !== 'all') props.choice.set(lineViewSetting, chosen);
    });
  const ownTarget = (): Setting<Decimal> =>
    (view() === 'difference' ? differenceTargetSetting : targetSetting)(props.result.name);
  const rangeEnd = (end: 'from' | 'to'): Decimal | undefined =>
    props.choice.get(rangeEndSetting(end, props.input.name));
  const target = createMemo((): Decimal => props.choice.get(ownTarget()), zero, {
    equals: (a, b) => a.eq(b),
  });
  const selection = createMemo(() => linesOfView(view()));
  const targets = createMemo((): Targets => {
    // Two plans meet where their difference is 0, whatever the target of each.
    return { plan: target(), against: target(), difference: view() === 'both' ? zero : target() };
  });
  const range = createMemo((): ShownRange => {
    const usual = possibleRange(props.lines.lever);
    return shownRange(usual, rangeEnd('from'), rangeEnd('to'), (value) => localFormat.full(value));
  });
  return {
    view,
    hasFurther: () => props.hasFurther,
    isAll,
    selection,
    target,
    targets,
    range,
    setView,
    setTarget: (text) => props.choice.set(ownTarget(), decimal(text)),
    setEnd: (end, text) =>
      props.choice.set(rangeEndSetting(end, props.input.name), text === '' ? undefined : decimal(text)),
  };
}
