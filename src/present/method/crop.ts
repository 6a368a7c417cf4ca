import { wording } from '../../language/wording';
import type { Chapter } from './entry';

export const crop: Chapter = {
  heading: wording`Beds and boards`,
  entries: [
    {
      id: 'balanced',
      what: wording`Stages that keep pace`,
      how: wording`A plant takes a share of a board for as long as it stands there, and one that is lost holds its place to the end of its stage. Boards are shared so that what one stage hands on the next can take: in proportion to plants entering × time ÷ density, never in proportion to time.`,
      formulas: [
        wording`board-weeks for one finished plant: *u* = Σ_{i} (*w*_{i} / *d*_{i}) / Π_{j≥i} *s*_{j}`,
        wording`finished plants a week: *F* = *B* / *u*`,
        wording`boards of stage *i*: *b*_{i} = *B* × *e*_{i} *w*_{i} / *d*_{i} ÷ Σ_{k} *e*_{k} *w*_{k} / *d*_{k}, where *e*_{i} = Π_{j<i} *s*_{j}`,
        wording`boards set by hand: *F* = the least over the stages of *b*_{i} *d*_{i} / *w*_{i} × Π_{j≥i} *s*_{j}`,
      ],
      design: wording`B boards, w weeks with the turnaround, d plants on a board, s the share that leaves a stage alive. A stage without time is skipped, its losses with it.`,
      source: wording`Little’s law: Little, Operations Research 9 (1961) 383–387; tested stage by stage against a simulation.`,
      limits: wording`It splits boards into parts and sows at every instant, so it is a ceiling that whole boards do not reach.`,
      where: wording`Beds.`,
    },
    {
      id: 'by weeks',
      what: wording`Sharing by weeks, a common shortcut`,
      how: wording`Shown beside the right way because it is often done: boards in proportion to weeks, and the places of all stages added up. The crowded stage then has far too many boards, and what the last one lets through is what one stage gives.`,
      formulas: [
        wording`it seems to give Σ *b*_{i} *d*_{i} / *W* with *b*_{i} = *B* *w*_{i} / *W*, times the share that survives`,
        wording`it gives the least of *b*_{i} *d*_{i} / *w*_{i} × Π_{j≥i} *s*_{j}`,
      ],
      source: wording`Common practice, no source; the algebra is the one of stages that keep pace.`,
      limits: wording`For comparison only: no other figure is built on it.`,
      where: wording`Beds.`,
    },
    {
      id: 'whole boards',
      what: wording`Whole boards`,
      how: wording`A batch is sown every interval and stands on whole boards in each stage. The whole batch is the largest that never needs more boards than there are. Losses are counted from the batch, not rounded stage by stage.`,
      formulas: [
        wording`plants entering stage *i*: *n*_{i} = ⌈*n* × Π_{j<i} *s*_{j}⌉, on ⌈*n*_{i} / *d*_{i}⌉ boards`,
        wording`batches in it at the instant *φ*: ⌊(*φ* − *o*_{i}) / *I*⌋ − ⌊(*φ* − *o*_{i} − *w*_{i}) / *I*⌋`,
        wording`finished plants a week: *n* × Π *s*_{j} × 7 days / *I*`,
      ],
      design: wording`Only the instants at which a batch enters or leaves a stage are looked at: in between nothing changes. I is the interval, o the days from sowing to a stage.`,
      source: wording`Counting; checked against the calendar, which follows each batch by itself.`,
      limits: wording`The same batch every time. What it loses against stages that keep pace is split into part-empty boards, boards that wait for the next batch, and free ones.`,
      where: wording`Beds, and the formula whole_batch.`,
    },
    {
      id: 'calendar',
      what: wording`The year in whole boards`,
      how: wording`Every batch is followed from its sowing to its harvest, day by day from an empty bed, through the times of the month in which it enters each stage and round the closed days. A batch whose move falls in a closed time waits where it is.`,
      design: wording`365 days unless told otherwise. Instants within a billionth of a day are one. In a last week of fewer days the staff’s hours count in proportion.`,
      source: wording`Simulation; the balanced flow and whole boards are tested against it.`,
      limits: wording`Times by month change at a stage’s entry, not within it. No weather, no chance.`,
      where: wording`Beds.`,
    },
    {
      id: 'touching',
      what: wording`When plants touch`,
      how: wording`The spread of a plant grows along a logistic curve; plants touch when it equals the distance to their neighbours. Each day after that takes a share of the mass, the price or the survivors.`,
      formulas: [
        wording`spread after *t* days: *K* / (1 + (*K*/*s* − 1) e^{−rt})`,
        wording`distance: √(*A*/*d*) in a square, √(2*A* / (√3 *d*)) where rows are shifted by half a place`,
        wording`kept: the larger of 0 and 1 − days crowded × loss a day`,
      ],
      source: wording`Spacing: Greenhouse Product News, Grower 101: Calculations Part IV, Spacing Containers. Logistic curve: Verhulst 1838, from memory.`,
      limits: wording`Light, season and cultivar move the curve: measure your own. A straight loss a day is a rule of thumb.`,
      where: wording`Beds, where a model has these entries.`,
    },
    {
      id: 'closer',
      what: wording`Closer or wider, without a move`,
      how: wording`A line through two trials: one over the mass of a plant rises straight with the plants on an area. From it the mass of a plant, and of all on a board, at today’s density.`,
      formulas: [wording`1 / *w* = *a* + *b* *d*, and *d* / (*a* + *b* *d*) for the area`],
      source: wording`Shinozaki and Kira, as used for lettuce by Scaife and Jones, Journal of Agricultural Science (1976), 10.1017/S002185960006500X.`,
      limits: wording`For plants that stand at one density from first to last, not for a crop that is moved wider. Two trials leave no room to see an error.`,
      where: wording`Beds, for a plan of one stage.`,
    },
    {
      id: 'best weeks',
      what: wording`Best weeks`,
      how: wording`The result at every pair of a time and a density of an early stage. A day more there is a day less in the next stage, unless the next stage’s time is held. The best pair is told, those as good, and how far one may stray before the result is 2 % worse.`,
      design: wording`Up to 61 × 61 pairs in float64: times by the entry’s step, else half days, densities by its step, else whole plants, from half of today’s to half as much again, or as far as its range. Pairs within a billionth of the best are as good.`,
      source: wording`Every pair is tried: nothing is left to a search.`,
      limits: wording`What the model does not make crowding cost, it does not see: a best at the edge says so. Everything else stays as it is today.`,
      where: wording`Beds.`,
    },
  ],
};
