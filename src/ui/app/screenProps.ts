import type { Whose } from '../../present/results/planSelection';
import type { Accessor } from 'solid-js';
import type { Setting } from './preferences/settings/setting';
import type { ModelStore } from './store/modelStore';

/** What a person has chosen to look at; kept by the autosave. Names are of cells that the model has. */
export interface Choice {
  /** The result asked about; blank where the model has none. */
  readonly result: Accessor<string>;
  setResult(name: string): void;
  /** The input that was chosen to be asked about; undefined until one is. */
  readonly input: Accessor<string | undefined>;
  setInput(name: string): void;
  /** Always `plan` where there is no plan to compare with. */
  readonly whose: Accessor<Whose>;
  setWhose(whose: Whose): void;
  /** The value of a setting; its usual value until it is set. */
  get<T>(setting: Setting<T>): T;
  set<T>(setting: Setting<T>, value: NoInfer<T>): void;
}

/** What every screen beside the numbers is given. */
export interface ScreenProps {
  readonly store: ModelStore;
  /** Index of the plan looked at. */
  readonly plan: number;
  /** Index of the plan it is compared with; undefined: none. */
  readonly against: number | undefined;
  readonly choice: Choice;
  /** Scrolls to an entry, opens its group and focuses it. */
  readonly goTo: (cell: number) => void;
}
