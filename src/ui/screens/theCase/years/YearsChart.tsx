import { createMemo, For, type JSX } from 'solid-js';
import { textOf, type Phrase } from '../../../../present/text/phrase';
import type { CaseBudget } from '../../../../present/theCase/caseOf';
import { yearsDrawing } from '../../../../present/theCase/years/drawing';
import { yearsTexts } from '../../../../present/theCase/years/texts';
import type { OverYears } from '../../../../trade/years/overYears';
import { localFormat } from '../../../app/preferences/localFormat';
import { LinesChart } from '../../../kit/charts/LinesChart';

interface ChartProps {
  readonly found: OverYears;
  readonly made: CaseBudget;
  readonly finding: Phrase;
}

/** The sums so far over the years, with interest and without. */
export function YearsChart(props: ChartProps): JSX.Element {
  const drawing = createMemo(() => yearsDrawing(props.found, localFormat));
  return (
    <LinesChart drawing={drawing()} label={textOf(props.finding)} caption={yearsTexts.picture(props.made.currency)}>
      <ol class="line-key years-key">
        <For each={drawing().lines}>
          {(line, place) => (
            <li classList={{ leading: line.leading }}>
              <span class="line-number">{place() + 1}</span>
              <svg viewBox="0 0 44 8" width="44" height="8" aria-hidden="true">
                <line
                  x1="0"
                  y1="4"
                  x2="44"
                  y2="4"
                  stroke="currentColor"
                  stroke-width={line.leading ? 3 : 1.75}
                  stroke-dasharray={line.look?.dash.join(' ')}
                />
              </svg>
              {line.label}
            </li>
          )}
        </For>
      </ol>
    </LinesChart>
  );
}
