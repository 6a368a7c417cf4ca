import { wording, wordingOf } from '../language/wording';
import { lostShare } from '../trade/lostShare';
import { aligned, jsonNumber, shortNumber } from './outcome';
import { byStep, timedHeads, type TimedView } from './timedView';

const none = wording`nobody counted losses: write them in the column lost, 0 for none.`;

/** The share lost in each step, from the batches whose losses were counted. */
export const lossesShown: TimedView = ({ batches, terms, confidence }) => {
  const found = byStep(batches).flatMap(([step, ofStep]) => {
    const losses = lostShare(ofStep, terms.halfWidths.z);
    return losses === undefined ? [] : [{ step, losses }];
  });
  const { step: ofStep, batches: ofBatches, plants: ofPlants, from, to } = timedHeads;
  const head = [ofStep, ofBatches, ofPlants, wordingOf('plants')`lost`, wording`lost, %`, from, to];
  const rows = found.map(({ step, losses: { batches: n, plants, lost, share, interval } }) => [
    step,
    String(n),
    ...[plants, lost, ...[share, ...interval].map((value) => value.times(100))].map(shortNumber),
  ]);
  const meaning = wording`from, to: Wilson’s ${confidence.toString()} % confidence interval`;
  return {
    document: found.map(({ step, losses }) => ({
      step,
      batches: losses.batches,
      plants: losses.plants.toNumber(),
      lost: losses.lost.toNumber(),
      share: jsonNumber(losses.share.times(100)),
      ci: losses.interval.map((end) => jsonNumber(end.times(100))),
    })),
    table: found.length === 0 ? `${none}\n` : `${aligned([head, ...rows], [1, 2, 3, 4, 5, 6])}\n${meaning}\n`,
  };
};
