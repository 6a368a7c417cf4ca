import { createMemo, Show, type JSX } from 'solid-js';
import type { CautionTopic } from '../../trade/cautions';
import { failingChecks } from '../failing';
import { namesAmong } from '../finding/named';
import { createSight } from '../finding/sight';
import { here } from '../here';
import { cautionTopics } from '../numbers/cautionTopics';
import { download } from '../saving';
import type { ScreenProps } from '../screen';
import { asksOf, type Asked } from './asks';
import { Assumed } from './Assumed';
import { Limits, Warnings } from './CaseNotes';
import type { Made } from './caseOf';
import { ComparedTable } from './ComparedTable';
import { HangsOn } from './HangsOn';
import { inventedTold } from './inventedTold';
import { withNetChange } from './netChange';
import { ownWords } from './ownWords';
import { OwnWordsView } from './OwnWordsView';
import { createPrint, type Print } from './printCase';
import type { SideBySide } from './shownIn';
import { createStudies, type Studies } from './studies';
import { budgetTable, tableName } from './table';
import { ToldAndBudget } from './ToldAndBudget';

interface CaseMadeProps extends ScreenProps {
  readonly made: Made;
  /** The plan that is given up. */
  readonly from: number;
}

/** A case for which there is a budget. */
export function CaseMade(props: CaseMadeProps): JSX.Element {
  const plans = createMemo((): [number, number] => [props.from, props.plan], undefined, {
    equals: (a, b) => a.join() === b.join(),
  });
  const names = createMemo((): [string, string] => {
    const [a = '', b = ''] = plans().map((plan) => props.live.shape().plans[plan]?.name ?? '');
    return [a, b];
  });
  const nameOf = createMemo(() => namesAmong(props.live.shape().cells));
  const beside = createMemo((): SideBySide => ({
    model: props.live.model(),
    values: props.live.values(),
    plans: plans(),
    nameOf: nameOf(),
    format: here,
  }));
  const asks = createMemo(() => asksOf(beside()));
  const asked = createMemo(() => (props.made.unknown.length === 0 ? withNetChange(props.live.model()) : undefined));
  let studied: HTMLDivElement | undefined;
  const inSight = createSight(() => studied);
  const studies = createStudies(
    props,
    () => asked(),
    () => asked() !== undefined && (inSight() || print.isWaiting()),
  );
  const print = createPrint(
    () => asked() === undefined || studies.settled(),
    () => props.choice.setSetting('question', 'the case'),
  );
  const failing = createMemo(() => {
    const values = props.live.values();
    return failingChecks(props.live.shape().cells, plans(), (plan, { id }) => values[plan]?.numbers[id]);
  });
  return (
    <>
      <Warnings failing={failing()} goTo={props.goTo} />
      <ToldAndBudget
        {...props}
        nameOf={nameOf()}
        names={names()}
        words={<OwnWordsView words={ownWords(props.choice, () => props.live.shape().title)} />}
      />
      <div class="studied" ref={studied}>
        <Studied
          {...props}
          names={names()}
          beside={beside()}
          asks={asks()}
          studies={asked() === undefined ? undefined : studies}
        />
      </div>
      <Limits invented={inventedTold(props.live.shape())} topics={topicsOf(props, asks())} />
      <CaseButtons {...props} print={print} />
    </>
  );
}

function CaseButtons(props: CaseMadeProps & { print: Print }): JSX.Element {
  return (
    <p class="case-buttons">
      <button type="button" class="word" onClick={() => props.print.start()}>
        Print the case
      </button>
      <button
        type="button"
        class="word"
        onClick={() => download(tableName(props.live.origin().name), budgetTable(props.made))}>
        Save the budget as a table
      </button>
      <span class="quiet" role="status">
        {props.print.isWaiting() ? 'One moment: the case is being worked out …' : ''}
      </span>
    </p>
  );
}

/** That this is no advice on money is said in any case. */
function topicsOf({ live }: CaseMadeProps, asks: readonly Asked[]): CautionTopic[] {
  const isHandWork = asks.some(({ kind }) => kind === 'seconds');
  const others = cautionTopics(live.shape().cells).filter((topic) => topic !== 'money');
  return isHandWork ? ['hands', ...others] : others;
}

interface StudiedProps extends CaseMadeProps {
  readonly names: readonly [string, string];
  readonly beside: SideBySide;
  readonly asks: readonly Asked[];
  /** Undefined where there is no net change to study. */
  readonly studies: Studies | undefined;
}

/** What the answer hangs on, what it asks of people and space, and what is assumed. */
function Studied(props: StudiedProps): JSX.Element {
  return (
    <>
      <Show when={props.studies}>
        {(studies) => (
          <section class="part" aria-labelledby="case-hangs-on">
            <h3 id="case-hangs-on">What it hangs on</h3>
            <HangsOn {...props} nameOf={props.beside.nameOf} studies={studies()} />
          </section>
        )}
      </Show>
      <Show when={props.asks.length > 0}>
        <section class="part rests-on" aria-labelledby="case-asks">
          <h3 id="case-asks">What it asks of people and space</h3>
          <div class="in-columns">
            <ComparedTable
              caption="Headlines, and what differs between the plans"
              groups={props.asks}
              plans={props.names}
              goTo={props.goTo}
            />
          </div>
        </section>
      </Show>
      <Show when={props.studies}>
        {(studies) => (
          <section class="part" aria-labelledby="case-assumed">
            <h3 id="case-assumed">What is assumed</h3>
            <Assumed {...props} studies={studies()} />
          </section>
        )}
      </Show>
    </>
  );
}
