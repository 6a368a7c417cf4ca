import { createMemo, Index, Show, type JSX } from 'solid-js';
import { plansTable, type PlanValue, type ResultRow } from '../../../present/plans/sideBySide';
import { noHeadlines, plansTexts } from '../../../present/plans/texts';
import { lettersOf } from '../../../present/text/planLetter';
import { usePage } from '../../app/pageContext';
import { Link } from '../../kit/Link';
import { TableRoom } from '../../kit/tables/TableRoom';
import { PlanLetter } from '../../kit/PlanLetter';
import { LinkedSentence } from '../../kit/sections/LinkedSentence';

interface SideBySideProps {
  readonly rows: readonly ResultRow[];
  /** Of the plans. */
  readonly names: readonly string[];
  readonly goTo: (cell: number) => void;
}

/** Every plan in a column, every headline in a row. */
export function SideBySide(props: SideBySideProps): JSX.Element {
  const { compared } = usePage();
  const letters = createMemo(() => lettersOf(props.names.length, compared.columns()));
  const letter = (plan: number): string => letters()[plan] ?? '';
  const first = (): ResultRow => props.rows[0]!;
  return (
    <section class="part" aria-labelledby="plans-table">
      <h3 id="plans-table">{plansTexts.sideBySide}</h3>
      <Show when={first().cell.role !== 'headline'}>
        <p class="quiet">
          <LinkedSentence phrase={noHeadlines(first().name)} onPress={() => props.goTo(first().cell.id)} />
        </p>
      </Show>
      <TableRoom label={plansTexts.tableRegion} table={() => plansTable(props.rows, props.names)}>
        <thead>
          <tr>
            <td />
            <Index each={props.names}>
              {(name, plan) => (
                <th scope="col" data-letter={letter(plan)}>
                  <PlanLetter letter={letter(plan)} />
                  <bdi>{name()}</bdi>
                  <Show when={plan === 0 && props.names.length > 1}>
                    <span class="plan-more">{plansTexts.reference}</span>
                  </Show>
                </th>
              )}
            </Index>
          </tr>
        </thead>
        <tbody>
          <Index each={props.rows}>
            {(row) => (
              <tr>
                <th scope="row">
                  <Link onPress={() => props.goTo(row().cell.id)}>{row().name}</Link>{' '}
                  <span class="unit">{row().unit}</span>
                </th>
                <Index each={row().values}>{(value) => <ValueCell value={value()} />}</Index>
              </tr>
            )}
          </Index>
        </tbody>
      </TableRoom>
      <Show when={props.names.length > 1}>
        <p class="quiet">{plansTexts.bestExplained}</p>
      </Show>
    </section>
  );
}

function ValueCell(props: { value: PlanValue }): JSX.Element {
  return (
    <td>
      <span class="plan-value">{props.value.text}</span>
      <Show when={props.value.best !== '' || props.value.difference !== ''}>
        <span class="plan-more">
          <Show when={props.value.best}>
            <b>{props.value.best}</b>{' '}
          </Show>
          <Show when={props.value.difference}>
            <span class="heard">{plansTexts.fromReference}</span>
            {props.value.difference}
          </Show>
        </span>
      </Show>
    </td>
  );
}
