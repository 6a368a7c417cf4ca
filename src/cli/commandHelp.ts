import { wording } from '../language/wording';

/** An option as a command's help tells of it; its name is what the command line accepts. */
export interface CommandOption {
  readonly name: string;
  /** What stands after it: `NAME`, `A`, `job|day`, or the number that is taken where it is left out; blank: nothing. */
  readonly value: string;
  readonly does: string;
  /** The command needs it. */
  readonly needed?: true;
}

/** What a person is told of a command, and which options it takes besides those of all. */
export interface CommandHelp {
  readonly name: string;
  /** The word after its name: `MODEL.csv`, `TRIALS.csv`, or what else it takes. */
  readonly takes: string;
  /** A line without a stop, for the list of commands. */
  readonly summary: string;
  /** What it gives, in sentences. */
  readonly gives: string;
  readonly options: readonly CommandOption[];
  /** Words after the program's name that can be run in the repository. */
  readonly example: string;
}

export const planOption: CommandOption = {
  name: 'plan',
  value: 'NAME',
  does: wording`the plan looked at; left out: the last plan column`,
};

const againstOption: CommandOption = {
  name: 'against',
  value: 'NAME',
  does: wording`look at the difference plan - against`,
};

export const setOption: CommandOption = {
  name: 'set',
  value: 'name=5',
  does: wording`another number for an input, in its own unit (repeatable)`,
};

/** The options of most commands whose file is a model. */
export const modelOptions: readonly CommandOption[] = [planOption, againstOption, setOption];

export const resultOption: CommandOption = {
  name: 'result',
  value: 'NAME',
  does: wording`the entry to look at`,
  needed: true,
};

export const targetOption: CommandOption = {
  name: 'target',
  value: '0',
  does: wording`the value that the result is held against`,
};
