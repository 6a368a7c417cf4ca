import { For, Show, type JSX } from 'solid-js';
import { setUpTexts } from '../../../present/setUp/setUpTexts';
import { letterOf } from '../../../present/text/planLetter';
import { outcomeTable, type FarmResults } from '../../../present/setUp/farmResults';
import { Waiting } from '../../kit/sections/Waiting';
import { PlainTable } from '../../kit/tables/PlainTable';
import type { FarmDraft } from './farmDraft';

/** What follows from the answers so far, and the way to a model of one's own. */
export function FarmOutcome(props: { draft: FarmDraft; onMake: () => void }): JSX.Element {
  const faults = (): number => props.draft.read().faults.size;
  return (
    <section class="farm-outcome" aria-labelledby="farm-outcome">
      <h2 id="farm-outcome">{setUpTexts.results}</h2>
      <Show when={props.draft.results()} fallback={<Waiting>{setUpTexts.reading}</Waiting>}>
        {(results) => (
          <>
            <OutcomeTable results={results()} />
            <For each={results().sentences}>{(sentence) => <p class="outcome-sentence">{sentence}</p>}</For>
          </>
        )}
      </Show>
      <Show when={faults() > 0}>
        <p class="message fault" role="status">
          {setUpTexts.stillWrong(faults())}
        </p>
      </Show>
      <p>
        <button
          type="button"
          class="press"
          disabled={props.draft.results() === undefined}
          onClick={() => props.onMake()}>
          {setUpTexts.make}
        </button>
      </p>
      <p class="quiet">{setUpTexts.makeHint}</p>
    </section>
  );
}

function OutcomeTable(props: { results: FarmResults }): JSX.Element {
  const length = (): number => props.results.plans.length;
  return (
    <PlainTable class="outcome-table" table={() => outcomeTable(props.results)}>
      <thead>
        <tr>
          <td />
          <For each={props.results.plans}>
            {(plan, i) => (
              <th scope="col" data-letter={letterOf(i(), length())}>
                {plan}
              </th>
            )}
          </For>
          <Show when={length() === 2}>
            <th scope="col">{setUpTexts.difference}</th>
          </Show>
        </tr>
      </thead>
      <tbody>
        <For each={props.results.rows}>
          {(row) => (
            <tr>
              <th scope="row">
                {row.label} <span class="unit">{row.unit}</span>
              </th>
              <For each={row.values}>{(value) => <td>{value}</td>}</For>
              <Show when={length() === 2}>
                <td>{row.difference}</td>
              </Show>
            </tr>
          )}
        </For>
      </tbody>
    </PlainTable>
  );
}
