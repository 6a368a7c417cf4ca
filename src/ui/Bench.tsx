import { createEffect, createMemo, createSignal, For, Show, type Accessor, type JSX } from 'solid-js';
import { createAutosave } from './autosave';
import type { Beginning } from './begin';
import { createBusy, createCalm } from './calm';
import { createChoice, type KeptChoice } from './choice';
import { createCompared, type Compared } from './compared';
import { createCovered } from './covered';
import { createDesk, type Desk } from './desk';
import { createDrafts, type Drafts } from './drafts';
import { listenForDrop } from './fileDrop';
import { Headlines } from './head/Headlines';
import { News } from './head/News';
import { Title } from './head/Title';
import { TopBar } from './head/TopBar';
import type { Keep } from './keep';
import { createLive, type Live } from './live';
import { createMedia, createScreenMedia, roomForBoth } from './media';
import { HowWorked } from './method/HowWorked';
import { Numbers } from './numbers/Numbers';
import { createSpot } from './numbers/spot';
import { questionOf, questions, questionsFor, usualSide, type Question } from './questions';
import { createScheme } from './scheme';
import { listenForLinks } from './sharedLink';
import { Side } from './Side';
import { listenForSteps } from './shortcuts';
import { useWork, WorkContext, type Work } from './work';

/** Brings back what was kept beside the model itself. */
function restore({ session }: Beginning, drafts: Drafts, choice: KeptChoice): void {
  for (const [row, column, text] of session?.drafts ?? []) drafts.set({ row, column }, text);
  choice.restore(session?.choice ?? {});
}

function groupOfRow(live: Live, row: number): string {
  let heading = '';
  for (const line of live.model().lines) {
    heading = (line.kind === 'cell' ? live.model().cells[line.cell]?.group : line.group) || heading;
    if (line.row === row) break;
  }
  return heading;
}

/** The plan looked at and the one it is compared with are kept with the choice. */
function keepCompared(compared: Compared, choice: KeptChoice, live: Live): void {
  compared.setPlan(choice.setting('plan'));
  compared.setAgainst(choice.setting('against'));
  createEffect(() => {
    const { plans } = live.shape();
    if (plans.length < 3) return;
    choice.setSetting('plan', plans[compared.plan()]?.name ?? '');
    choice.setSetting('against', plans[compared.against() ?? -1]?.name ?? '');
  });
}

interface Parts {
  readonly work: Work;
  readonly desk: Desk;
  readonly question: () => Question;
  readonly setQuestion: (question: Question) => void;
}

function createParts(beginning: Beginning): Parts {
  const live = createLive(beginning.model, beginning.origin);
  const drafts = createDrafts(live);
  const compared = createCompared(live);
  const choice = createChoice(live, compared);
  restore(beginning, drafts, choice);
  keepCompared(compared, choice, live);
  const question = createMemo(() => questionOf(choice.setting('question')));
  const setQuestion = (chosen: Question): void => choice.setSetting('question', chosen);
  const spot = createSpot(
    live,
    () => setQuestion('numbers'),
    (row) => groupOfRow(live, row),
  );
  const printing = createMedia('print');
  const work = {
    live,
    drafts,
    compared,
    choice,
    spot,
    covered: createCovered(),
    calm: createCalm(live.version),
    busy: createBusy(live.version),
    printing,
  };
  return { work, desk: createDesk(live, drafts), question, setQuestion };
}

/** The question that stands beside the numbers, or would: the one asked last. */
function createSide({ choice }: Work, question: Accessor<Question>): Accessor<Question> {
  const [side, setSide] = createSignal<Question>(question() === 'numbers' ? usualSide : question());
  createEffect(() => {
    const shown = question();
    if (shown === 'numbers') return;
    setSide(shown);
    if (shown !== 'method') choice.setSetting('side', shown);
  });
  return side;
}

/** The page once there is a model: title, headlines, numbers and the question beside them. */
export function Bench(props: { beginning: Beginning; keep: Keep }): JSX.Element {
  // A page begins once.
  // eslint-disable-next-line solid/reactivity
  const { work, desk, question, setQuestion } = createParts(props.beginning);
  // eslint-disable-next-line solid/reactivity
  const kept = createAutosave(work, props.keep, props.beginning.kept);
  const { scheme, choose } = createScheme();
  const wide = createScreenMedia(roomForBoth);
  const hovering = listenForDrop(desk.open);
  listenForLinks(desk.openLink);
  const side = createSide(work, question);
  const asked = createMemo(() => questionsFor(work.live.shape()));
  listenForSteps(work.live);
  createEffect(() => {
    const { title } = work.live.shape();
    document.title = title ? `${title} – Raftmargin` : 'Raftmargin';
  });
  return (
    <WorkContext.Provider value={work}>
      <a class="skip" href="#numbers-heading">
        To the numbers
      </a>
      <a class="skip" href="#questions">
        To the questions
      </a>
      <TopBar
        kept={kept()}
        scheme={scheme()}
        onScheme={choose}
        onFile={desk.open}
        onShipped={desk.openShipped}
        onSave={desk.save}
        onLink={desk.copyLink}
        onStartOver={desk.startOver}
      />
      <News desk={desk} onUndo={() => work.live.undo()} />
      <main>
        <Title />
        <Headlines />
        <Halves wide={wide()} question={question()} side={side()} among={asked()} onChoose={setQuestion} />
        <footer class="foot">
          <HowWorked choice={work.choice} entry="">
            How everything is worked out
          </HowWorked>
        </footer>
      </main>
      <Show when={!wide()}>
        <Questions chosen={question()} among={asked()} onChoose={setQuestion} />
      </Show>
      <WayBack />
      <Show when={hovering()}>
        <div class="drop-here" aria-hidden="true">
          <p>Drop the file to open it</p>
        </div>
      </Show>
    </WorkContext.Provider>
  );
}

interface HalvesProps {
  /** Whether there is room for both halves. */
  readonly wide: boolean;
  readonly question: Question;
  readonly side: Question;
  readonly among: readonly Question[];
  readonly onChoose: (question: Question) => void;
}

/** The numbers and the question beside them, or one of the two. */
function Halves(props: HalvesProps): JSX.Element {
  const { covered } = useWork();
  const beside = (): readonly Question[] => props.among.filter((key) => key !== 'numbers');
  return (
    <div class="halves">
      <div class="numbers-half" classList={{ off: !props.wide && props.question !== 'numbers' }}>
        <Numbers />
      </div>
      <Show when={props.wide || props.question !== 'numbers'}>
        <div class="side-half" style={{ '--covered': `${covered.height()}px` }}>
          <Show when={props.wide}>
            <Questions chosen={props.side} among={beside()} onChoose={props.onChoose} />
          </Show>
          <Side question={props.wide ? props.side : props.question} />
        </div>
      </Show>
    </div>
  );
}

/** Back to where somebody came from by a link. */
function WayBack(): JSX.Element {
  const { wayBack } = useWork().spot;
  return (
    <Show when={wayBack.to()} keyed>
      {(label) => (
        <button type="button" class="word way-back" onClick={() => wayBack.go()}>
          Back to {label}
        </button>
      )}
    </Show>
  );
}

interface QuestionsProps {
  readonly chosen: Question;
  readonly among: readonly Question[];
  readonly onChoose: (question: Question) => void;
}

function Questions(props: QuestionsProps): JSX.Element {
  return (
    <nav id="questions" class="questions" aria-label="Questions" tabIndex={-1}>
      <For each={questions.filter(({ key }) => props.among.includes(key))}>
        {({ key, label }) => (
          <button
            type="button"
            aria-current={props.chosen === key ? 'page' : undefined}
            onClick={() => props.onChoose(key)}>
            {label}
          </button>
        )}
      </For>
    </nav>
  );
}
