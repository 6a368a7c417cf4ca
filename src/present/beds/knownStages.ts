import { translated } from '../../language/translated';
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

/** The stages that the trade has words for. */
export const tradeStages = ['nursery', 'finishing', 'middle', 'tight', 'wide', 'crowded'] as const;

/** What is meant by such a word in a catalogue. */
export const stageContexts = {
  alone: 'a stage by itself',
  beside: 'beside the word for its boards',
  one: 'one board of a stage, as in a label',
  many: 'boards of a stage, as in a label',
} as const;

/** By the English word. */
const trade = new Map(
  tradeStages.map((word): [string, TradeStage] => {
    const said = (meant: keyof typeof stageContexts): string => translated(word, stageContexts[meant]);
    return [word, { alone: said('alone'), beside: said('beside'), labelled: { one: said('one'), many: said('many') } }];
  }),
);

/** One of several stages in the middle. */
function middleStage(number: string): KnownStage {
  const beside = wordingOf('beside the word for its boards')`middle ${number}`;
  return { alone: wordingOf('a stage by itself')`middle ${number}`, beside: { one: beside, many: beside } };
}

/** The stage of a name: the English word, or what a label has beside the word for boards; undefined for any other. */
export function knownStage(name: string): KnownStage | undefined {
  const [, number] = /^middle (\d+)$/.exec(name) ?? [];
  if (number !== undefined) return middleStage(number);
  const own = trade.get(name);
  if (own !== undefined) return { alone: own.alone, beside: { one: own.beside, many: own.beside } };
  const found = [...trade.values()].find(({ labelled }) => labelled.many === name);
  return found && { alone: found.alone, beside: found.labelled };
}
