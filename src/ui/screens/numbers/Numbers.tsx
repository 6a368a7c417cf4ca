import { createMemo, createSelector, For, lazy, Show, Suspense, type JSX } from 'solid-js';
import type { Problem } from '../../../core/problem';
import { Cautions } from '../../kit/sections/Cautions';
import { Link } from '../../kit/Link';
import { openTogether } from '../../kit/together/openTogether';
import { usePage } from '../../app/pageContext';
import { createInTurn } from '../../app/turns/inTurn';
import { questionSetting } from '../../app/preferences/settings/page';
import { cautionTopics } from '../../../present/page/cautionTopics';
import { GroupOfRows, type FaultsByRow } from './GroupOfRows';
import { MarkedSentence } from './MarkedSentence';
import { entryTexts } from '../../../present/numbers/entryTexts';
import { listTexts } from '../../../present/numbers/listTexts';
import { keptLines, outline, sifted, type OutlineGroup, type Sieve } from '../../../present/numbers/outline';
import { OwnWork } from './own/OwnWork';
import { SaidLine } from './own/SaidLine';
import { PlanHeads } from './PlanHeads';
import { WordsHere } from '../../kit/sections/WordsHere';
import { seeTogether } from '../../../present/together/heading';
import { varying } from '../../../present/numbers/varying';

const LessonWork = lazy(async () => ({ default: (await import('./lesson/LessonWork')).LessonWork }));
const FiguresList = lazy(async () => ({ default: (await import('./figures/FiguresList')).FiguresList }));

/** From this number of rows on, only those near the screen are put on the page. */
const manyRows = 400;

/** Number of rows that are drawn as they come: about as many as a screen shows. */
const firstRows = 12;

function byRow(faults: readonly Problem[]): ReadonlyMap<number, readonly Problem[]> {
  const rows = new Map<number, Problem[]>();
  for (const fault of faults) rows.set(fault.where.row, [...(rows.get(fault.where.row) ?? []), fault]);
  return rows;
}

/** Every entry of the model under its heading. */
export function Numbers(): JSX.Element {
  const { store, compared, navigation, choice, lesson } = usePage();
  const lines = createMemo(() => store.shape().lines);
  const cells = createMemo(() => store.shape().cells);
  const groups = createMemo<readonly OutlineGroup[]>((before) => keptLines(outline(lines(), cells()), before), []);
  const shown = createMemo<readonly OutlineGroup[]>((before) => {
    const sieve = { words: navigation.words(), onlyInputs: navigation.onlyInputs() };
    const narrowed = sifted(groups(), store.shape(), sieve);
    return narrowed === groups() ? narrowed : keptLines(narrowed, before);
  }, []);
  const varied = createMemo(() => varying(store.shape(), compared.columns()), undefined, {
    equals: (a, b) => a.size === b.size && [...a].every((id) => b.has(id)),
  });
  const faultsByRow = createMemo(() => byRow(store.faults()));
  const isFaulty = createSelector(faultsByRow, (row: number, faulty) => faulty.has(row));
  const faults: FaultsByRow = (row) => (isFaulty(row) ? faultsByRow().get(row) : undefined);
  const topics = createMemo(() => cautionTopics(cells()));
  const isLong = createMemo(() => lines().length > manyRows);
  return (
    <section
      class="numbers"
      classList={{ 'two-plans': compared.columns().length > 1 }}
      style={{ '--range-to': JSON.stringify(entryTexts.to) }}
      aria-labelledby="numbers-heading">
      <div class="numbers-head">
        <h2 id="numbers-heading" tabindex="-1">
          {listTexts.heading}
        </h2>
        <Sieves />
        <p class="hint quiet">
          {listTexts.pressALabel} <Link onPress={() => openTogether(choice, '')}>{seeTogether}</Link>
        </p>
        <OwnWork kinds={['line', 'entry', 'steps', 'whole']} />
      </div>
      <Show when={lesson.lesson()}>
        <Suspense>
          <LessonWork />
        </Suspense>
      </Show>
      <Whose />
      <PlanHeads />
      <Show when={lines().some((line) => line.kind !== 'text')} fallback={<NoEntries />}>
        <Show when={shown().length > 0} fallback={<NothingFound />}>
          <Show when={store.origin()} keyed>
            <Groups among={shown()} varied={varied()} faults={faults} lazy={isLong()} />
          </Show>
        </Show>
      </Show>
      <WordsHere question="numbers" />
      <Show when={topics().length > 0}>
        <Cautions topics={topics()} />
      </Show>
      <SaidLine />
    </section>
  );
}

/** Whose the figures are; of a sample that nobody has changed there is nothing to list. */
function Whose(): JSX.Element {
  const { store, choice } = usePage();
  const isSample = createMemo(() => store.origin().shipped !== '' && store.model().sheet === store.origin().file.sheet);
  const sample = (
    <p class="whose">
      {listTexts.allOfSample} <Link onPress={() => choice.set(questionSetting, 'set up')}>{listTexts.setUp}</Link>
    </p>
  );
  return (
    <Show when={!isSample()} fallback={sample}>
      <Suspense fallback={<p class="whose" />}>
        <FiguresList />
      </Suspense>
    </Show>
  );
}

interface GroupsProps {
  readonly among: readonly OutlineGroup[];
  readonly varied: ReadonlySet<number>;
  readonly faults: FaultsByRow;
  readonly lazy: boolean;
}

/** All groups of one opened model, whose rows come onto the page in turn. */
function Groups(props: GroupsProps): JSX.Element {
  const { navigation, printing } = usePage();
  const wanted = (): boolean => navigation.wanted() !== undefined || navigation.words() !== '' || printing();
  // Of a long model only what is near is on the page: its groups come whole.
  const rowsOf = ({ lines }: OutlineGroup): number => (props.lazy ? 1 : Math.max(1, lines.length));
  const rowsBefore = createMemo(() => {
    const before = new Map<string, number>();
    let rows = 0;
    for (const group of props.among) {
      before.set(group.name, rows);
      rows += rowsOf(group);
    }
    return { before, all: rows };
  });
  const there = createInTurn(() => rowsBefore().all, wanted);
  const isWhole = createMemo(() => there() >= rowsBefore().all);
  const before = (name: string): number => rowsBefore().before.get(name) ?? 0;
  const thereOf = (name: string): number => there() - before(name);
  const names = createMemo(() => props.among.map(({ name }) => name).filter((name) => thereOf(name) > 0));
  return (
    <>
      <For each={names()}>
        {(name) => (
          <NamedGroup
            name={name}
            there={props.lazy ? Infinity : thereOf(name)}
            isToCome={!isWhole() && before(name) > firstRows}
            {...props}
          />
        )}
      </For>
      <Show when={!isWhole()}>
        <div class="rows-to-come" />
      </Show>
    </>
  );
}

interface NamedProps extends GroupsProps {
  readonly name: string;
  /** Number of its rows that are on the page. */
  readonly there: number;
  /** Whether it waits until the rows of all groups are there: a browser need not draw the page anew for each. */
  readonly isToCome: boolean;
}

/** A group by its heading: it stays on the page while entries come to it, leave it or change places. */
function NamedGroup(props: NamedProps): JSX.Element {
  const group = createMemo<OutlineGroup>((before) => props.among.find(({ name }) => name === props.name) ?? before, {
    name: '',
    lines: [],
  });
  return (
    <GroupOfRows
      group={group()}
      there={props.there}
      isToCome={props.isToCome}
      varied={props.varied}
      faults={props.faults}
      lazy={props.lazy}
    />
  );
}

function Sieves(): JSX.Element {
  const { navigation } = usePage();
  return (
    <div class="sieves" role="search">
      <label>
        <span class="heard">{listTexts.find}</span>
        <input
          type="search"
          class="filter"
          placeholder={listTexts.find}
          value={navigation.words()}
          onInput={(event) => navigation.setWords(event.currentTarget.value)}
        />
      </label>
      <label class="tick">
        <input
          type="checkbox"
          checked={navigation.onlyInputs()}
          onChange={(event) => navigation.setOnlyInputs(event.currentTarget.checked)}
        />
        {listTexts.onlyInputs}
      </label>
    </div>
  );
}

function NothingFound(): JSX.Element {
  const { navigation } = usePage();
  const sieve = (): Sieve => ({ words: navigation.words(), onlyInputs: navigation.onlyInputs() });
  return (
    <div class="empty">
      <p>
        <MarkedSentence as="q" phrase={listTexts.noneFound(sieve())} />
      </p>
      <Link
        onPress={() => {
          navigation.setWords('');
          navigation.setOnlyInputs(false);
        }}>
        {listTexts.showAll}
      </Link>
    </div>
  );
}

function NoEntries(): JSX.Element {
  return (
    <div class="empty">
      <h3>{listTexts.empty.heading}</h3>
      <p>{listTexts.empty.whatAModelIs}</p>
      <p>{listTexts.empty.whatToDo}</p>
    </div>
  );
}
