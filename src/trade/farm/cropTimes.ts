import type { Decimal } from '../../core/number';

/** A time on the water and where it comes from. */
export interface CropTime {
  readonly time: Decimal;
  /** `total`: so that a crop takes as long in both plans; `template`: nobody said anything of it. */
  readonly from: 'answer' | 'total' | 'template';
}

/** Times on the water of both plans, all in one unit. */
export interface CropTimes<T> {
  /** From set-out to harvest, without a nursery. */
  readonly today: T;
  readonly nursery: T;
  /** From the move to harvest. */
  readonly finishing: T;
}

const answer = (time: Decimal): CropTime => ({ time, from: 'answer' });
const template = (time: Decimal): CropTime => ({ time, from: 'template' });
const total = (time: Decimal): CropTime => ({ time, from: 'total' });

/** What is left of a total, or half of it where a part is as long as that or longer. */
function restOf(whole: Decimal, part: Decimal): Decimal {
  return part.lt(whole) ? whole.minus(part) : whole.div(2);
}

/**
 * The times of a crop where some are given: what is not follows from the same total in both plans, as far as it can.
 * A crop does not become shorter because somebody left a field blank.
 */
export function cropTimes(given: Partial<CropTimes<Decimal>>, usual: CropTimes<Decimal>): CropTimes<CropTime> {
  const { today, nursery, finishing } = given;
  if (today === undefined) {
    if (nursery === undefined && finishing === undefined) {
      return {
        today: template(usual.today),
        nursery: template(usual.nursery),
        finishing: template(usual.finishing),
      };
    }
    const first = nursery === undefined ? template(usual.nursery) : answer(nursery);
    const second = finishing === undefined ? template(usual.finishing) : answer(finishing);
    return { today: total(first.time.plus(second.time)), nursery: first, finishing: second };
  }
  if (nursery !== undefined) {
    const second = finishing === undefined ? total(restOf(today, nursery)) : answer(finishing);
    return { today: answer(today), nursery: answer(nursery), finishing: second };
  }
  if (finishing !== undefined) {
    return { today: answer(today), nursery: total(restOf(today, finishing)), finishing: answer(finishing) };
  }
  const first = usual.nursery.lt(today) ? template(usual.nursery) : total(today.div(2));
  return { today: answer(today), nursery: first, finishing: total(today.minus(first.time)) };
}
