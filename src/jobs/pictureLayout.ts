import { layOut, type Layout, type LayoutRequest } from '../present/together/layout';
import type { Prepared, Report } from './job';

/** Lays a picture out: one step, which takes as long as it takes. It asks nothing of a model. */
// A job is a generator, also where it has nothing to say before its end.
// eslint-disable-next-line require-yield
export function* pictureLayout(_prepared: Prepared, request: LayoutRequest): Generator<Report<Layout>, Layout> {
  return layOut(request);
}
