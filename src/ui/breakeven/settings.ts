import { createMemo, type Accessor } from 'solid-js';
import type { Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import { defaultRange } from '../../study/searchRange';
import { here } from '../here';
import type { Choice } from '../screen';
import type { Lines } from './lines';
import type { Looked, Targets } from './quickStudy';
import { keptNumber, lookedAt, zero, type LookedAt } from './range';
import { lookedAtIn, viewOf, type View } from './view';

/** What a question depends on besides the model. */
export interface Settings {
  readonly view: Accessor<View>;
  readonly looked: Accessor<Looked>;
  /** The target that someone can set: that of each plan, or of the difference where that is looked at. */
  readonly target: Accessor<Decimal>;
  readonly targets: Accessor<Targets>;
  readonly range: Accessor<LookedAt>;
  setView(view: View): void;
  setTarget(text: string): void;
  /** Blank goes back to the usual end. */
  setEnd(end: 'from' | 'to', text: string): void;
}

interface SettingsProps {
  readonly choice: Choice;
  readonly result: Cell;
  readonly input: Cell;
  readonly lines: Lines;
}

/** The settings, kept with the choice: the target by result, the range by input. */
export function createSettings(props: SettingsProps): Settings {
  const view = createMemo(() => viewOf(props.choice.setting('breakeven view'), props.lines));
  const targetKey = (): string => {
    const what = view() === 'difference' ? 'difference target' : 'target';
    return `breakeven ${what} ${props.result.name}`;
  };
  const endKey = (end: string): string => `breakeven ${end} ${props.input.name}`;
  const target = createMemo((): Decimal => keptNumber(props.choice.setting(targetKey())) ?? zero, zero, {
    equals: (a, b) => a.eq(b),
  });
  const looked = createMemo(() => lookedAtIn(view()));
  const targets = createMemo((): Targets => {
    // Both plans meet where their difference is 0, whatever target each of them has.
    return { plan: target(), against: target(), difference: view() === 'both' ? zero : target() };
  });
  const range = createMemo((): LookedAt => {
    const [from, to] = [props.choice.setting(endKey('from')), props.choice.setting(endKey('to'))];
    return lookedAt(defaultRange(props.lines.lever), from, to, (value) => here.full(value));
  });
  return {
    view,
    looked,
    target,
    targets,
    range,
    setView: (chosen) => props.choice.setSetting('breakeven view', chosen),
    setTarget: (text) => props.choice.setSetting(targetKey(), text),
    setEnd: (end, text) => props.choice.setSetting(endKey(end), text),
  };
}
