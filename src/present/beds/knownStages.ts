import { wordingOf } from '../../language/wording';
import type { Noun } from '../text/noun';

/** What a language makes of a stage's name that the trade has. */
interface TradeStage {
  /** By itself, as the head of a column. */
  readonly alone: string;
  /** Beside the word for boards, benches or pans, whatever its gender and number. */
  readonly beside: string;
  /** The same as the label of a time has it, where it agrees with the word for boards. */
  readonly labelled: Noun;
}

/** A stage's name by itself, and beside the word for one of its boards and for several. */
interface KnownStage {
  readonly alone: string;
  readonly beside: Noun;
}

/** By the English word. */
const trade: Readonly<Record<string, TradeStage>> = {
  nursery: {
    alone: wordingOf('a stage by itself')`nursery`,
    beside: wordingOf('beside the word for its boards')`nursery`,
    labelled: {
      one: wordingOf('one board of a stage, as in a label')`nursery`,
      many: wordingOf('boards of a stage, as in a label')`nursery`,
    },
  },
  finishing: {
    alone: wordingOf('a stage by itself')`finishing`,
    beside: wordingOf('beside the word for its boards')`finishing`,
    labelled: {
      one: wordingOf('one board of a stage, as in a label')`finishing`,
      many: wordingOf('boards of a stage, as in a label')`finishing`,
    },
  },
  middle: {
    alone: wordingOf('a stage by itself')`middle`,
    beside: wordingOf('beside the word for its boards')`middle`,
    labelled: {
      one: wordingOf('one board of a stage, as in a label')`middle`,
      many: wordingOf('boards of a stage, as in a label')`middle`,
    },
  },
  tight: {
    alone: wordingOf('a stage by itself')`tight`,
    beside: wordingOf('beside the word for its boards')`tight`,
    labelled: {
      one: wordingOf('one board of a stage, as in a label')`tight`,
      many: wordingOf('boards of a stage, as in a label')`tight`,
    },
  },
  wide: {
    alone: wordingOf('a stage by itself')`wide`,
    beside: wordingOf('beside the word for its boards')`wide`,
    labelled: {
      one: wordingOf('one board of a stage, as in a label')`wide`,
      many: wordingOf('boards of a stage, as in a label')`wide`,
    },
  },
  crowded: {
    alone: wordingOf('a stage by itself')`crowded`,
    beside: wordingOf('beside the word for its boards')`crowded`,
    labelled: {
      one: wordingOf('one board of a stage, as in a label')`crowded`,
      many: wordingOf('boards of a stage, as in a label')`crowded`,
    },
  },
};

/** One of several stages in the middle. */
function middleStage(number: string): KnownStage {
  const beside = wordingOf('beside the word for its boards')`middle ${number}`;
  return { alone: wordingOf('a stage by itself')`middle ${number}`, beside: { one: beside, many: beside } };
}

/** The stage of a name: the English word, or what a label has beside the word for boards; undefined for any other. */
export function knownStage(name: string): KnownStage | undefined {
  const [, number] = /^middle (\d+)$/.exec(name) ?? [];
  if (number !== undefined) return middleStage(number);
  const own = Object.hasOwn(trade, name) ? trade[name] : undefined;
  if (own !== undefined) return { alone: own.alone, beside: { one: own.beside, many: own.beside } };
  const found = Object.values(trade).find(({ labelled }) => labelled.many === name);
  return found && { alone: found.alone, beside: found.labelled };
}
