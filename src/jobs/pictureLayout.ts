import { evenedOut } from '../present/together/evenOut';
import { layOut, type Layout, type LayoutRequest } from '../present/together/layout';
import type { Prepared, Report } from './job';

/** Lays a picture out: one step, which takes as long as it takes. It asks nothing of a model. */
export function* pictureLayout(_prepared: Prepared, request: LayoutRequest): Generator<Report<Layout>, Layout> {
  return evenedOut(layOut(request));
}
