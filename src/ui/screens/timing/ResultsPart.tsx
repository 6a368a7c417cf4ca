import { createMemo, For, Show, type JSX } from 'solid-js';
import { localFormat } from '../../app/preferences/localFormat';
import { TableRoom } from '../../kit/tables/TableRoom';
import { MethodLink } from '../../kit/method/MethodLink';
import type { Choice } from '../../app/screenProps';
import { resultRow, resultsTable, type ResultRow } from '../../../present/timing/resultTable';
import type { StepFound } from '../../../present/timing/study';
import type { TimingTerms } from '../../../present/timing/terms';
import { termsText } from '../../../present/timing/sentences';
import { resultsTexts } from '../../../present/timing/resultsTexts';
import { timingFields } from '../../../present/timing/texts';

interface ResultsProps {
  readonly choice: Choice;
  readonly study: readonly StepFound[];
  readonly timing: TimingTerms;
  readonly chosen: string;
  readonly choose: (step: string) => void;
}

const none = '–';

/** The figures of every step; pressing a step's name chooses it. */
export function ResultsPart(props: ResultsProps): JSX.Element {
  const rows = createMemo(() => props.study.map((found) => resultRow(found, props.timing, localFormat)));
  return (
    <section class="timing-results" aria-labelledby="timing-results">
      <h3 id="timing-results">{resultsTexts.heading}</h3>
      <TableRoom label={resultsTexts.table} table={() => resultsTable(rows(), props.study, props.timing, localFormat)}>
        <thead>
          <tr>
            <th scope="col">{timingFields.step}</th>
            <th scope="col">{resultsTexts.batches}</th>
            <th scope="col" class="whole">
              {timingFields.secondsEach}
            </th>
            <th scope="col">{resultsTexts.from}</th>
            <th scope="col">{resultsTexts.to}</th>
            <th scope="col">{resultsTexts.needed}</th>
            <th scope="col">{resultsTexts.standard}</th>
            <th scope="col">{timingFields.plants}</th>
            <th scope="col">{resultsTexts.lost}</th>
          </tr>
        </thead>
        <tbody>
          <For each={rows()}>{(row) => <Line {...props} row={row} />}</For>
        </tbody>
      </TableRoom>
      <p class="quiet">{termsText(props.timing, localFormat)}</p>
      <MethodLink choice={props.choice} entry="timed mean" />
      <MethodLink choice={props.choice} entry="batches needed">
        {resultsTexts.howMany}
      </MethodLink>
    </section>
  );
}

function Line(props: ResultsProps & { row: ResultRow }): JSX.Element {
  const isChosen = (): boolean => props.row.step === props.chosen;
  return (
    <tr classList={{ chosen: isChosen() }}>
      <th scope="row">
        <button type="button" class="link" aria-pressed={isChosen()} onClick={() => props.choose(props.row.step)}>
          {props.row.name}
        </button>
      </th>
      <td>
        {props.row.batches}
        <Show when={props.row.leftOut > 0}>
          <span class="left-out">{resultsTexts.leftOut(props.row.leftOut)}</span>
        </Show>
      </td>
      <td class="main">{props.row.seconds || none}</td>
      <td>{props.row.from || none}</td>
      <td>{props.row.to || none}</td>
      <td>{props.row.needed || none}</td>
      <td>{props.row.standard || none}</td>
      <td>{props.row.plants || none}</td>
      <td>{props.row.lost || none}</td>
    </tr>
  );
}
