import { createMemo, Index, type JSX } from 'solid-js';
import type { Problem } from '../../core/problem';
import { rangeTexts } from '../../present/numbers/rangeTexts';
import { usePage } from '../app/pageContext';
import { fitRanges } from '../app/store/fitRanges';
import { Link } from '../kit/Link';

/** Numbers outside their ranges, and one press that moves all these ranges. */
export function FitAll(props: { outside: readonly Problem[] }): JSX.Element {
  const { store, navigation } = usePage();
  const cells = createMemo(() => {
    const rows = new Set(props.outside.map(({ where }) => where.row));
    return store.shape().cells.filter(({ row }) => rows.has(row));
  });
  return (
    <div class="fit-all">
      <p>{rangeTexts.outsideList(cells().length)}</p>
      <ul>
        <Index each={cells()}>
          {(cell) => (
            <li>
              <Link onPress={() => navigation.goToRow(cell().row)}>{cell().label}</Link>
            </li>
          )}
        </Index>
      </ul>
      <button type="button" class="word" onClick={() => fitRanges(store, cells())}>
        {rangeTexts.fitAll(cells().length)}
      </button>
    </div>
  );
}
