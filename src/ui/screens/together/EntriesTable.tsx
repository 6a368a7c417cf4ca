import { createMemo, createEffect, createSignal, on, Show, untrack, type JSX } from 'solid-js';
import { entriesTable, entryLine, tableHeads, tableOrder } from '../../../present/together/table';
import { togetherTexts } from '../../../present/together/texts';
import { usePage } from '../../app/pageContext';
import { localFormat } from '../../app/preferences/localFormat';
import { HeadedTable } from '../../kit/tables/HeadedTable';
import type { Picture } from './scene';

/** Rows that are put on the page together. */
const together = 150;

/** The entries of the picture as a table; it follows once nothing has changed for a moment. */
export function EntriesTable(props: { picture: Picture; put: (id: number) => void }): JSX.Element {
  const { store, compared, settled } = usePage();
  const [most, setMost] = createSignal(together);
  const drawn = (): ReturnType<Picture['drawn']> => props.picture.drawn();
  createEffect(
    on(
      () => drawn().middle,
      () => setMost(together),
    ),
  );
  const cells = createMemo(() => tableOrder(drawn(), store.shape().cells));
  const rows = createMemo(() => {
    settled();
    return cells()
      .slice(0, most())
      .map((cell) => {
        const shown = untrack(() => compared.columns().map((plan) => store.shown(plan, cell.id)));
        return entryLine(cell, shown, props.picture.links(), drawn(), localFormat);
      });
  });
  const left = (): number => Math.min(together, cells().length - rows().length);
  return (
    <div class="together-table">
      <h3>{togetherTexts.table}</h3>
      <HeadedTable
        label={togetherTexts.tableRegion}
        table={entriesTable(rows(), tableHeads(compared.columns().length), togetherTexts.table)}
        captioned={false}
        goTo={(row) => props.put(rows()[row]!.cell.id)}
      />
      <Show when={left() > 0}>
        <button type="button" class="link more" onClick={() => setMost((count) => count + together)}>
          {togetherTexts.more(left())}
        </button>
      </Show>
    </div>
  );
}
