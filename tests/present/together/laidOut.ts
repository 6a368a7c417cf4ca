import { linksOf } from '../../../src/model/links/links';
import type { Model } from '../../../src/model/model';
import { varying } from '../../../src/present/numbers/varying';
import { boxOf } from '../../../src/present/together/boxes';
import type { Direction } from '../../../src/present/together/choices';
import { wholeDrawn } from '../../../src/present/together/drawn';
import { groupMarks } from '../../../src/present/together/groupMarks';
import type { LayoutRequest, PlacedBox } from '../../../src/present/together/layout';

/** Every letter as wide as any other, in pixels. */
export const evenLetters = (text: string): number => Array.from(text).length * 6.2;

/** What is asked for the whole of a model, its first two plans compared. */
export function wholeRequest(model: Model, direction: Direction): LayoutRequest {
  const plans = model.plans.slice(0, 2);
  const columns = plans.map((_plan, p) => p);
  const drawn = wholeDrawn(model, plans, linksOf(plans));
  const varied = varying(model, columns);
  const marks = groupMarks(model);
  const boxes = drawn.ids.map((id) =>
    boxOf(model.cells[id]!, marks.get(id)!.group, varied.has(id) ? columns : [0], evenLetters),
  );
  return { boxes, arrows: drawn.arrows, direction };
}

/** Whether two boxes have any place in common. */
export function overlap(a: PlacedBox, b: PlacedBox): boolean {
  return Math.abs(a.x - b.x) < (a.width + b.width) / 2 && Math.abs(a.y - b.y) < (a.height + b.height) / 2;
}
