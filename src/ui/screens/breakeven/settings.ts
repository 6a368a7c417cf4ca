import { createMemo, type Accessor } from 'solid-js';
import type { Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import { defaultRange } from '../../../study/searchRange';
import { localFormat } from '../../app/preferences/localFormat';
import type { Choice } from '../../app/screenProps';
import type { ResultLines } from '../../../present/results/resultLines';
import type { LineSelection, Targets } from '../../../present/breakeven/curve/quickStudy';
import { keptNumber, shownRange, zero, type ShownRange } from '../../../present/breakeven/range';
import { linesOfView, lineViewOf, type LineView } from '../../../present/breakeven/view';

/** What a question depends on besides the model. */
export interface BreakevenSettings {
  readonly view: Accessor<LineView>;
  readonly selection: Accessor<LineSelection>;
  /** The target that someone can set: that of each plan, or of the difference where that is looked at. */
  readonly target: Accessor<Decimal>;
  readonly targets: Accessor<Targets>;
  readonly range: Accessor<ShownRange>;
  setView(view: LineView): void;
  setTarget(text: string): void;
  /** Blank goes back to the usual end. */
  setEnd(end: 'from' | 'to', text: string): void;
}

interface SettingsProps {
  readonly choice: Choice;
  readonly result: Cell;
  readonly input: Cell;
  readonly lines: ResultLines;
}

/** The settings, kept with the choice: the target by result, the range by input. */
export function createBreakevenSettings(props: SettingsProps): BreakevenSettings {
  const view = createMemo(() => lineViewOf(props.choice.setting('breakeven view'), props.lines));
  const targetKey = (): string => {
    const what = view() === 'difference' ? 'difference target' : 'target';
    return `breakeven ${what} ${props.result.name}`;
  };
  const endKey = (end: string): string => `breakeven ${end} ${props.input.name}`;
  const target = createMemo((): Decimal => keptNumber(props.choice.setting(targetKey())) ?? zero, zero, {
    equals: (a, b) => a.eq(b),
  });
  const selection = createMemo(() => linesOfView(view()));
  const targets = createMemo((): Targets => {
    // Both plans meet where their difference is 0, whatever target each of them has.
    return { plan: target(), against: target(), difference: view() === 'both' ? zero : target() };
  });
  const range = createMemo((): ShownRange => {
    const [from, to] = [props.choice.setting(endKey('from')), props.choice.setting(endKey('to'))];
    return shownRange(defaultRange(props.lines.lever), from, to, (value) => localFormat.full(value));
  });
  return {
    view,
    selection,
    target,
    targets,
    range,
    setView: (chosen) => props.choice.setSetting('breakeven view', chosen),
    setTarget: (text) => props.choice.setSetting(targetKey(), text),
    setEnd: (end, text) => props.choice.setSetting(endKey(end), text),
  };
}
