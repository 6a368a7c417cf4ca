import { For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import { LinkedSentence } from '../../kit/sections/LinkedSentence';
import { WaitingOr } from '../../kit/sections/WaitingOr';
import { Sentence } from '../../kit/sections/Sentence';
import { localFormat } from '../../app/preferences/localFormat';
import { questionSetting } from '../../app/preferences/settings/page';
import { MethodLink } from '../../kit/method/MethodLink';
import { usePage } from '../../app/pageContext';
import type { ScreenProps } from '../../app/screenProps';
import { Link } from '../../kit/Link';
import { PlainTable } from '../../kit/tables/PlainTable';
import { Aligned } from './Aligned';
import type { CaseBudget } from '../../../present/theCase/caseOf';
import type { TurningInput } from '../../../present/theCase/closest';
import {
  besideLabel,
  turningSentence,
  turningTable,
  turningTexts,
  oddsSentence,
  rangeText,
} from '../../../present/theCase/hangsOn';
import type { Studies } from './studies';
import { hangsOnTexts } from '../../../present/theCase/hangsOnTexts';
import { commonTexts } from '../../../present/text/commonTexts';

interface HangsOnProps extends ScreenProps {
  readonly made: CaseBudget;
  readonly studies: Studies;
  readonly nameOf: (cell: Cell) => string;
}

/** Which inputs change the answer soonest, and how sure it is with all ranges at once. */
export function HangsOn(props: HangsOnProps): JSX.Element {
  const { isSent } = usePage();
  const openHowSure = (): void => props.choice.set(questionSetting, 'how sure');
  return (
    <>
      <Show
        when={props.studies.closest()}
        fallback={<WaitingOr reason={props.studies.broken()}>{hangsOnTexts.looking}</WaitingOr>}>
        {(found) => (
          <>
            <p>
              <Sentence phrase={turningSentence(found(), props.made, props.nameOf, localFormat)} />
            </p>
            <Show when={found().hinges.length > 0}>
              <Hinges hinges={found().hinges} nameOf={props.nameOf} goTo={props.goTo} />
            </Show>
          </>
        )}
      </Show>
      <p class="odds">
        <Show when={props.studies.odds()}>
          {(found) => (
            <>
              <Sentence phrase={oddsSentence(found(), props.made, localFormat)} />{' '}
            </>
          )}
        </Show>
        <Show when={!isSent}>
          <span class="off-paper">
            <LinkedSentence phrase={hangsOnTexts.more} onPress={openHowSure} />
          </span>
        </Show>
      </p>
      <MethodLink choice={props.choice} entry="switching" />
    </>
  );
}

interface HingesProps {
  readonly hinges: readonly TurningInput[];
  readonly nameOf: (cell: Cell) => string;
  readonly goTo: (cell: number) => void;
}

function Hinges(props: HingesProps): JSX.Element {
  return (
    <PlainTable class="hinges" table={() => turningTable(props.hinges, props.nameOf, localFormat)}>
      <caption>{hangsOnTexts.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{commonTexts.entry}</th>
          <th scope="col">{commonTexts.today}</th>
          <th scope="col">{hangsOnTexts.turnsAt}</th>
          <th scope="col">
            <span class="heard">{hangsOnTexts.unit}</span>
          </th>
          <th scope="col">{commonTexts.itsRange}</th>
        </tr>
      </thead>
      <tbody>
        <For each={props.hinges}>
          {(hinge) => {
            const texts = turningTexts(hinge, localFormat);
            return (
              <tr>
                <th scope="row">
                  <Link onPress={() => props.goTo(hinge.cell.id)}>{props.nameOf(hinge.cell)}</Link>
                  <span class="narrow-only">{besideLabel(hinge, localFormat)}</span>
                </th>
                <td>
                  <Aligned text={texts.today} />
                </td>
                <td>
                  <Aligned text={texts.turns} />
                </td>
                <td class="unit">{texts.unit}</td>
                <td class="range-says">{rangeText(hinge, localFormat)}</td>
              </tr>
            );
          }}
        </For>
      </tbody>
    </PlainTable>
  );
}
