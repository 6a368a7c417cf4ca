import { createMemo, For, type JSX } from 'solid-js';
import { textOf, type Phrase } from '../../../../present/text/phrase';
import type { CaseBudget } from '../../../../present/theCase/caseOf';
import { yearsDrawing } from '../../../../present/theCase/years/drawing';
import { yearsTexts } from '../../../../present/theCase/years/texts';
import type { OverYears } from '../../../../trade/years/overYears';
import { localFormat } from '../../../app/preferences/localFormat';
import { LineSample } from '../../../kit/charts/LineSample';
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
      <ol class="line-key">
        <For each={drawing().lines}>
          {(line, place) => (
            <li classList={{ leading: line.leading }}>
              <span class="line-number">{place() + 1}</span>
              <LineSample leading={line.leading} dash={line.look?.dash} />
              {line.label}
            </li>
          )}
        </For>
      </ol>
    </LinesChart>
  );
}
