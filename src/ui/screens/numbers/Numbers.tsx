import { createMemo, createSelector, For, Show, type JSX } from 'solid-js';
import type { Problem } from '../../../core/problem';
import { Cautions } from '../../kit/sections/Cautions';
import { LessonPrint } from './lesson/LessonPrint';
import { Link } from '../../kit/Link';
import { usePage } from '../../app/pageContext';
import { cautionTopics } from '../../../present/page/cautionTopics';
import { GroupOfRows, type FaultsByRow } from './GroupOfRows';
import { keptLines, outline, sifted, type OutlineGroup } from '../../../present/numbers/outline';
import { PlanHeads } from './PlanHeads';
import { varying } from '../../../present/numbers/varying';

/** Rows from which on only those near the screen are put on the page. */
const manyRows = 400;

function byRow(faults: readonly Problem[]): ReadonlyMap<number, readonly Problem[]> {
  const rows = new Map<number, Problem[]>();
  for (const fault of faults) rows.set(fault.where.row, [...(rows.get(fault.where.row) ?? []), fault]);
  return rows;
}

/** Every entry of the model under its heading. */
export function Numbers(): JSX.Element {
  const { store, compared, navigation } = usePage();
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
      aria-labelledby="numbers-heading">
      <div class="numbers-head">
        <h2 id="numbers-heading" tabindex="-1">
          Numbers
        </h2>
        <Sieves />
        <p class="hint quiet">Press a label to see where its number comes from and what it feeds.</p>
      </div>
      <LessonPrint />
      <PlanHeads />
      <Show when={lines().some((line) => line.kind !== 'text')} fallback={<NoEntries />}>
        <Show when={shown().length > 0} fallback={<NothingFound />}>
          <For each={shown()}>
            {(group) => <GroupOfRows group={group} varied={varied()} faults={faults} lazy={isLong()} />}
          </For>
        </Show>
      </Show>
      <Show when={topics().length > 0}>
        <Cautions topics={topics()} />
      </Show>
    </section>
  );
}

function Sieves(): JSX.Element {
  const { navigation } = usePage();
  return (
    <div class="sieves" role="search">
      <label>
        <span class="heard">Find an entry</span>
        <input
          type="search"
          class="filter"
          placeholder="Find an entry"
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
        Only inputs
      </label>
    </div>
  );
}

function NothingFound(): JSX.Element {
  const { navigation } = usePage();
  return (
    <div class="empty">
      <p>
        No entry has <q>{navigation.words()}</q> in its label or name
        {navigation.onlyInputs() ? ' among the inputs' : ''}.
      </p>
      <Link
        onPress={() => {
          navigation.setWords('');
          navigation.setOnlyInputs(false);
        }}>
        Show all entries
      </Link>
    </div>
  );
}

function NoEntries(): JSX.Element {
  return (
    <div class="empty">
      <h3>No entries yet</h3>
      <p>A model is a table: one row for each number, with a name, a label, a unit, and a number or a formula.</p>
      <p>Open one of the models that come with Raftmargin, or drop a CSV file of your own anywhere on this page.</p>
    </div>
  );
}
