import { For, Show, type JSX } from 'solid-js';
import type { Figure } from '../../../../present/lesson/figures';

interface FigureTableProps {
  readonly heading: string;
  readonly figures: readonly Figure[];
  readonly plans: readonly string[];
}

/** Entries with their values, one column a plan. */
export function FigureTable(props: FigureTableProps): JSX.Element {
  const several = (): boolean => props.plans.length > 1;
  return (
    <section class="sheet-figures">
      <h2>{props.heading}</h2>
      <table>
        <Show when={several()}>
          <thead>
            <tr>
              <td />
              <For each={props.plans}>{(plan) => <th scope="col">{plan}</th>}</For>
              <td />
            </tr>
          </thead>
        </Show>
        <tbody>
          <For each={props.figures}>
            {({ label, unit, values }) => (
              <tr>
                <th scope="row">{label}</th>
                <For each={values}>{(value) => <td>{value}</td>}</For>
                <td class="sheet-unit">{unit}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </section>
  );
}
