import { createMemo, Index, untrack, type JSX } from 'solid-js';
import { outsideRange } from '../../model/change/ranges';
import { rangeTexts } from '../../present/numbers/rangeTexts';
import { usePage } from '../app/pageContext';
import { fitRanges } from '../app/store/fitRanges';
import { Link } from '../kit/Link';

/** Numbers outside their ranges, and one press that moves all these ranges. */
export function FitAll(): JSX.Element {
  const { store, navigation } = usePage();
  const cells = createMemo(() => {
    store.outside();
    return outsideRange(untrack(store.model));
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
