import { wording, wordingOf } from '../language/wording';
import { oddBatches, oddScore } from '../trade/oddBatches';
import { aligned } from './outcome';
import { byStep, floatText, shortFloat, timedHeads, type TimedView } from './timedView';

const none = wording`no batch lies far from the others of its step and way.`;

/** The batches that lie far from the others of their step and way; none is left out by that. */
export const oddShown: TimedView = ({ batches }) => {
  const found = byStep(batches).flatMap(([step, ofStep]) => {
    const ways = [...new Set(ofStep.map(({ way }) => way))];
    return ways.flatMap((way) => {
      const odd = oddBatches(ofStep.filter((batch) => batch.way === way));
      return odd.map((batch) => ({ step, way, ...batch }));
    });
  });
  const head = [
    timedHeads.step,
    wording`way`,
    wordingOf('of a table')`row`,
    wording`seconds per plant`,
    wording`median`,
    wording`score`,
  ];
  const rows = found.map(({ step, way, row, seconds, median, score }) => [
    step,
    way || '—',
    String(row),
    ...[seconds, median, score].map(shortFloat),
  ]);
  const meaning = wording`score: 0.6745 distances from the median in median distances; beyond ${oddScore} a batch is odd`;
  return {
    document: found.map(({ step, way, row, seconds, median, score }) => ({
      step,
      way,
      row,
      seconds_per_plant: floatText(seconds),
      median: floatText(median),
      score: floatText(score),
    })),
    table: found.length === 0 ? `${none}\n` : `${aligned([head, ...rows], [2, 3, 4, 5])}\n${meaning}\n`,
  };
};
