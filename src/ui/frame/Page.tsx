import { createEffect, createMemo, createSignal, on, Show, type Accessor, type JSX, type Signal } from 'solid-js';
import type { Beginning, Kept } from '../app/shelf/beginning';
import { createKeeper, type Keeper } from '../app/shelf/keeper';
import { createBusy, createSettled } from '../app/store/settling';
import { createChangeSaid } from '../app/store/changeSaid';
import { createChoice, type KeptChoice } from '../app/preferences/choice';
import { keepCompared } from '../app/preferences/keepCompared';
import { createComparedPlans } from '../app/store/comparedPlans';
import { createStickyHeight } from '../app/layout/stickyHeight';
import { createFileActions, type FileActions } from '../app/files/fileActions';
import { createDrafts, type Drafts } from '../app/store/drafts';
import { listenForDrop } from '../app/files/fileDrop';
import { AlonePane } from './AlonePane';
import { NoticeBar } from './NoticeBar';
import { TopBar } from './TopBar';
import { createHiding } from '../app/store/hiding';
import { createLessonState } from '../app/store/lessonState';
import { createModelStore, type ModelStore } from '../app/store/modelStore';
import { createMedia, createScreenMedia, roomForBoth } from '../app/preferences/media';
import type { Model } from '../../model/model';
import { questionSetting, sideSetting } from '../app/preferences/settings/page';
import { createFootLine } from '../kit/paper/footLine';
import { PrintWord } from '../kit/paper/PrintWord';
import { MethodLink } from '../kit/method/MethodLink';
import { createEntryNavigation } from '../app/store/entryNavigation';
import { fileTexts } from '../../present/page/fileTexts';
import { commonTexts } from '../../present/text/commonTexts';
import { frameTexts } from '../../present/page/frameTexts';
import { questionsFor, standsAlone, usualSide, type ScreenQuestion } from '../../present/page/questions';
import { createScheme } from '../app/preferences/scheme';
import { listenForLessonLinks } from '../app/files/lessonLink';
import { OfModel } from './OfModel';
import { createPageParts } from './pageParts';
import { Places } from './Places';
import { Questions } from './Questions';
import { Shelf } from './Shelf';
import { listenForSteps } from '../app/store/undoKeys';
import { PageContext, type PageState } from '../app/pageContext';

/** Restores what was kept besides the model: drafts and choices. */
function restore({ work }: Beginning, drafts: Drafts, choice: KeptChoice): void {
  for (const [row, column, text] of work?.drafts ?? []) drafts.set({ row, column }, text);
  choice.restore(work?.choice ?? {});
}

function groupOfRow(store: ModelStore, row: number): string {
  let heading = '';
  for (const line of store.model().lines) {
    heading = (line.kind === 'cell' ? store.model().cells[line.cell]?.group : line.group) || heading;
    if (line.row === row) break;
  }
  return heading;
}

interface Parts {
  readonly page: PageState;
  readonly question: () => ScreenQuestion;
  readonly setQuestion: (question: ScreenQuestion) => void;
}

function createParts(beginning: Beginning): Parts {
  const store = createModelStore(beginning.model, beginning.origin, beginning.values);
  const drafts = createDrafts(store);
  const compared = createComparedPlans(store);
  const choice = createChoice(store, compared);
  restore(beginning, drafts, choice);
  keepCompared(compared, choice, store);
  const question = createMemo(() => choice.get(questionSetting));
  const lesson = createLessonState(store, choice);
  const shown = createHiding(store, lesson);
  const setQuestion = (chosen: ScreenQuestion): void => choice.set(questionSetting, chosen);
  const navigation = createEntryNavigation(
    store,
    () => setQuestion('numbers'),
    (row) => groupOfRow(store, row),
  );
  const printing = createMedia('print');
  const page = {
    store: shown,
    lesson,
    drafts,
    compared,
    choice,
    navigation,
    changes: createChangeSaid(shown),
    stickyHeight: createStickyHeight(),
    settled: createSettled(store.version),
    busy: createBusy(store.version),
    printing,
    isSent: false,
  };
  return { page, question, setQuestion };
}

/** Whether a question has its place beside the numbers. */
function isBeside(question: ScreenQuestion): boolean {
  return question !== 'numbers' && !standsAlone(question);
}

/** Only beds are not in every model. */
function isFor(model: Model, question: ScreenQuestion): boolean {
  return question !== 'beds' || questionsFor(model).includes(question);
}

/** The question beside the numbers where there is room: the last one other than the numbers that the model has. */
function createSide({ choice, store }: PageState, question: Accessor<ScreenQuestion>): Signal<ScreenQuestion> {
  const [side, setSide] = createSignal<ScreenQuestion>(isBeside(question()) ? question() : usualSide);
  createEffect(() => {
    const shown = question();
    if (!isBeside(shown)) return;
    setSide(shown);
    if (shown !== 'method') choice.set(sideSetting, shown);
  });
  const shown = createMemo(() => (isFor(store.shape(), side()) ? side() : usualSide));
  return [shown, setSide];
}

/** What is opened while a page stands alone takes its place: a new farm above all. */
function leaveAlone({ store }: PageState, question: Accessor<ScreenQuestion>, ask: Parts['setQuestion']): void {
  const leave = (): void => {
    if (!standsAlone(question())) return;
    ask('numbers');
    requestAnimationFrame(() => {
      scrollTo({ top: 0 });
      document.getElementById('numbers-heading')?.focus({ preventScroll: true });
    });
  };
  createEffect(on(store.origin, leave, { defer: true }));
}

/** The window and each printed page are named after the model. */
function followTitle({ store }: PageState): void {
  createEffect(() => {
    document.title = frameTexts.windowTitle(store.shape().title);
  });
  createFootLine();
}

/** Opening and saving of files, and the shelf on which the work is kept: each has to do with the other. */
function createKeeping(
  page: PageState,
  beginning: Beginning,
  shelf: Kept,
): { fileActions: FileActions; keeper: Keeper } {
  const fileActions = createFileActions(page.store, page.drafts, {
    database: shelf.database,
    isKept: () => keeper.state().state !== 'failed',
    onSaved: () => void keeper.saveVersion().catch(keeper.sayNoVersion),
  });
  const keeper = createKeeper(page, { ...shelf, beginning, say: fileActions.say });
  if (beginning.news) fileActions.say(beginning.news);
  return { fileActions, keeper };
}

/** The page of a model. */
export function Page(props: { beginning: Beginning; shelf: Kept }): JSX.Element {
  // A page begins once.
  // eslint-disable-next-line solid/reactivity
  const { page, question, setQuestion } = createParts(props.beginning);
  // eslint-disable-next-line solid/reactivity
  const { fileActions, keeper } = createKeeping(page, props.beginning, props.shelf);
  const { scheme, choose } = createScheme();
  const wide = createScreenMedia(roomForBoth);
  listenForLessonLinks(page, fileActions.openLink);
  const side = createSide(page, question);
  const [isShelfOpen, setShelfOpen] = createSignal(false);
  const shelfOpen: Signal<boolean> = [isShelfOpen, setShelfOpen];
  const asked = createMemo(() => questionsFor(page.store.shape()));
  listenForSteps(page.store);
  leaveAlone(page, question, setQuestion);
  followTitle(page);
  const has = createPageParts(page);
  return (
    <PageContext.Provider value={page}>
      <Skips lead={!standsAlone(question())} />
      <Show when={has('bar')}>
        <TopBar
          kept={keeper.state()}
          shelf={<Shelf database={props.shelf.database} keeper={keeper} say={fileActions.say} open={shelfOpen} />}
          isShelfOpen={isShelfOpen()}
          scheme={scheme()}
          onScheme={choose}
          onSetUp={() => setQuestion('set up')}
          onFiles={fileActions.open}
          onShipped={fileActions.openShipped}
          onSave={fileActions.save}
          onLink={fileActions.copyLink}
          onStartOver={fileActions.startOver}
        />
        <NoticeBar fileActions={fileActions} keeper={keeper} onUndo={() => page.store.undo()} />
      </Show>
      <main>
        <Show
          when={!standsAlone(question())}
          fallback={<AlonePane question={question()} onFile={(file) => fileActions.open([file])} />}>
          <OfModel
            has={has}
            wide={wide()}
            question={question()}
            side={side[0]()}
            among={asked()}
            onChoose={setQuestion}
          />
        </Show>
        <Show when={has('rest')}>
          <Foot choice={page.choice} />
        </Show>
      </main>
      <Show when={has('rest') && !wide() && question() !== 'teach'}>
        <Questions chosen={question()} among={asked()} onChoose={setQuestion} />
      </Show>
      <Places keeper={keeper} kept={props.shelf} beginning={props.beginning} side={side} shelf={shelfOpen} />
      <DropHere open={fileActions.open} />
    </PageContext.Provider>
  );
}

/** Files can be dropped anywhere on the page; what is said while one hovers over it. */
function DropHere(props: Pick<FileActions, 'open'>): JSX.Element {
  // They come in an event.
  // eslint-disable-next-line solid/reactivity
  const hovering = listenForDrop((files) => props.open(files));
  return (
    <Show when={hovering()}>
      <div class="drop-here" aria-hidden="true">
        <p>{fileTexts.dropHere}</p>
      </div>
    </Show>
  );
}

/** Below all else: how it is worked out, and all of it on paper. */
function Foot(props: { choice: KeptChoice }): JSX.Element {
  return (
    <footer class="foot">
      <MethodLink choice={props.choice} entry="">
        {frameTexts.howWorked}
      </MethodLink>
      <PrintWord part="page">{commonTexts.printPage}</PrintWord>
    </footer>
  );
}

/** Ways past the bar at the top, for those who go by keys, where there is what they lead to. */
function Skips(props: { lead: boolean }): JSX.Element {
  return (
    <Show when={props.lead}>
      <a class="skip" href="#numbers-heading">
        {frameTexts.toNumbers}
      </a>
      <a class="skip" href="#questions">
        {frameTexts.toQuestions}
      </a>
    </Show>
  );
}
