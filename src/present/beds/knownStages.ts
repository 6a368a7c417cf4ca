import { wordingOf } from '../../language/wording';

/** What a language makes of a stage's name that the trade has. */
interface KnownStage {
  /** By itself, as the head of a column. */
  readonly alone: string;
  /** Beside the word for boards or benches. */
  readonly beside: string;
}

/** By the English word. */
const known: Readonly<Record<string, KnownStage>> = {
  nursery: {
    alone: wordingOf('a stage by itself')`nursery`,
    beside: wordingOf('beside the word for its boards')`nursery`,
  },
  finishing: {
    alone: wordingOf('a stage by itself')`finishing`,
    beside: wordingOf('beside the word for its boards')`finishing`,
  },
  middle: {
    alone: wordingOf('a stage by itself')`middle`,
    beside: wordingOf('beside the word for its boards')`middle`,
  },
  tight: {
    alone: wordingOf('a stage by itself')`tight`,
    beside: wordingOf('beside the word for its boards')`tight`,
  },
  wide: {
    alone: wordingOf('a stage by itself')`wide`,
    beside: wordingOf('beside the word for its boards')`wide`,
  },
  crowded: {
    alone: wordingOf('a stage by itself')`crowded`,
    beside: wordingOf('beside the word for its boards')`crowded`,
  },
};

/** One of several stages in the middle. */
function middleStage(number: string): KnownStage {
  return {
    alone: wordingOf('a stage by itself')`middle ${number}`,
    beside: wordingOf('beside the word for its boards')`middle ${number}`,
  };
}

/** The stage of a name: the English word, or what stands beside the word for boards on this page; else undefined. */
export function knownStage(name: string): KnownStage | undefined {
  const [, number] = /^middle (\d+)$/.exec(name) ?? [];
  if (number !== undefined) return middleStage(number);
  return (
    (Object.hasOwn(known, name) ? known[name] : undefined) ?? Object.values(known).find(({ beside }) => beside === name)
  );
}
