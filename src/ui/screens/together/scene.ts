import { createEffect, createMemo, createSignal, onCleanup, untrack, type Accessor } from 'solid-js';
import type { Plan } from '../../../model/model';
import { linksOf, type Links } from '../../../model/links/links';
import type { Sheet } from '../../../model/sheet';
import { varying } from '../../../present/numbers/varying';
import { boxOf, boxPlan, type EntryBox } from '../../../present/together/boxes';
import { drawnAround, wholeDrawn, type Drawn } from '../../../present/together/drawn';
import { groupMarks, type GroupMark } from '../../../present/together/groupMarks';
import type { Layout, LayoutRequest } from '../../../present/together/layout';
import type { MeasureText } from '../../../present/together/wrap';
import { createJob, type JobClient } from '../../app/jobs/createJob';
import type { PageState } from '../../app/pageContext';
import { togetherEntrySetting } from '../../app/preferences/settings/page';
import { directionSetting, reachSetting } from '../../app/preferences/settings/together';
import { createMeasure } from '../../kit/charts/measure';

/** What stands on the picture at one moment: what was laid out and where. */
export interface Scene {
  readonly layout: Layout;
  readonly drawn: Drawn;
  readonly boxes: ReadonlyMap<number, EntryBox>;
}

/** What the parts of the screen share. */
export interface Picture {
  /** The plans compared. */
  readonly plans: Accessor<readonly Plan[]>;
  readonly links: Accessor<Links>;
  readonly marks: Accessor<ReadonlyMap<number, GroupMark>>;
  readonly drawn: Accessor<Drawn>;
  readonly measure: Accessor<MeasureText>;
  /** The newest that is laid out; undefined before the first, and where nothing is to be drawn. */
  readonly scene: Accessor<Scene | undefined>;
  readonly job: JobClient<'picture layout'>;
}

/** The worker needs no model to lay boxes out. */
const noSheet: Sheet = { columns: [], rows: [] };

/** Widths in the page's text face, measured anew once its fonts are there. */
function createTextMeasure(): Accessor<MeasureText> {
  const family = getComputedStyle(document.body).fontFamily;
  const make = (): MeasureText => createMeasure(`500 ${boxPlan.type}px ${family}`);
  const [measure, setMeasure] = createSignal<MeasureText>(make());
  let open = true;
  onCleanup(() => {
    open = false;
  });
  if (document.fonts.status !== 'loaded') {
    void document.fonts.ready.then(() => {
      if (open) setMeasure(make);
    });
  }
  return measure;
}

function sameRequest(a: LayoutRequest, b: LayoutRequest): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/**
 * The worker's layout of the newest request. It is one step that nothing can stop, so that what is asked meanwhile
 * waits for its end: cancelled, it would take the worker with it.
 */
function createLayoutJob(request: Accessor<LayoutRequest>): JobClient<'picture layout'> {
  const job = createJob('picture layout');
  let asked: LayoutRequest | undefined;
  createEffect(() => {
    const newest = request();
    const isBusy = asked !== undefined && job.state().state === 'busy';
    if (isBusy || newest === asked || newest.boxes.length === 0) return;
    asked = newest;
    untrack(() => {
      job.ask({ sheet: noSheet, request: newest });
      // A press is to be answered at once; the pause is for what follows typing.
      job.again();
    });
  });
  return job;
}

/**
 * What is drawn, and where the worker puts it. All of it follows from what entries are called and which others they
 * name, and nothing from their numbers: while a number is typed, it stays where it is.
 */
export function createScene({ store, compared, choice }: PageState): Picture {
  const measure = createTextMeasure();
  const plans = createMemo(() => compared.columns().flatMap((plan) => store.shape().plans[plan] ?? []));
  const links = createMemo(() => linksOf(plans()));
  const marks = createMemo(() => groupMarks(store.shape()));
  const varied = createMemo(() => varying(store.shape(), compared.columns()));
  const drawn = createMemo(() => {
    const middle = store.shape().ids.get(choice.get(togetherEntrySetting));
    return middle === undefined
      ? wholeDrawn(store.shape(), plans(), links())
      : drawnAround(plans(), links(), middle, choice.get(reachSetting));
  });
  const boxes = createMemo(() => {
    const { cells } = store.shape();
    const columns = (id: number): readonly number[] =>
      varied().has(id) ? compared.columns() : compared.columns().slice(0, 1);
    const made = drawn().ids.map((id) => boxOf(cells[id]!, marks().get(id)?.group ?? '', columns(id), measure()));
    return new Map(made.map((box) => [box.id, box]));
  });
  const request = createMemo(
    (): LayoutRequest => ({
      boxes: [...boxes().values()].map(({ id, width, height }) => ({ id, width, height })),
      arrows: drawn().arrows.map(({ from, to }) => ({ from, to })),
      direction: choice.get(directionSetting),
    }),
    undefined,
    { equals: sameRequest },
  );
  const job = createLayoutJob(() => request());
  const scene = createMemo<Scene | undefined>(
    (before) => {
      const { found, of } = job.state();
      if (drawn().ids.length === 0) return undefined;
      const isNewest = found !== undefined && of?.request === request();
      return isNewest ? { layout: found, drawn: drawn(), boxes: boxes() } : before;
    },
    undefined,
    { equals: (a, b) => a?.layout === b?.layout && a?.drawn === b?.drawn && a?.boxes === b?.boxes },
  );
  return { plans, links, marks, drawn, measure, scene, job };
}
