import { createSignal, Show, type JSX } from 'solid-js';
import { ownSources, withRangeSource } from '../../../../model/change/sources';
import type { Plan } from '../../../../model/model';
import { figuresTexts } from '../../../../present/numbers/figuresTexts';
import { placeText } from '../../../../present/numbers/figurePlaces';
import type { PlacedFigure } from '../../../../present/numbers/ownFigures';
import { usePage } from '../../../app/pageContext';
import { localFormat } from '../../../app/preferences/localFormat';
import { rowId } from '../../../app/store/entryNavigation';
import { RangeOffer } from '../RangeOffer';
import { NumberInPlace } from './NumberInPlace';

interface FigureItemProps {
  readonly figure: PlacedFigure;
  /** Its label, and where it stands if another has the same one. */
  readonly name: string;
  readonly onAnswer: () => void;
}

/** The field of a row's figure in one of the columns shown, once the row has been gone to. */
function focusColumn(row: number, column: number): void {
  requestAnimationFrame(() => {
    const field = document.getElementById(rowId(row))?.querySelectorAll('.value')[column];
    field?.querySelector<HTMLElement>('.number-field')?.focus({ preventScroll: true });
  });
}

/** An answer may draw the figure anew. */
function focusChange(row: number): void {
  requestAnimationFrame(() => {
    document.querySelector<HTMLElement>(`.figures-list [data-row="${row}"] .figure-change`)?.focus();
  });
}

/** A figure as it stands, with what can be said of it. */
export function FigureItem(props: FigureItemProps): JSX.Element {
  const { store, navigation, compared } = usePage();
  const [isAsking, setAsking] = createSignal(false);
  const row = (): number => props.figure.cell.row;
  const plan = (): Plan | undefined => props.figure.places[0]?.plans[0];
  const index = (): number => store.shape().plans.findIndex(({ name }) => name === plan()?.name);
  const isNumber = (): boolean => props.figure.places[0]?.content.kind === 'input';
  const say = (own: string): void => {
    const source = props.figure.cell.range === undefined ? own : withRangeSource(own, props.figure.source);
    store.edit({ row: row(), column: 'source', text: source });
    store.finish();
    props.onAnswer();
  };
  const change = (): void => {
    if (!isNumber()) {
      setAsking(true);
      return;
    }
    navigation.goToRow(row());
    focusColumn(row(), compared.columns().indexOf(index()));
  };
  const leave = (): void => {
    setAsking(false);
    focusChange(row());
  };
  const answered = (): void => {
    props.onAnswer();
    leave();
  };
  return (
    <li data-row={row()}>
      <span class="figure-name">{props.name}</span>
      <span class="leader" aria-hidden="true" />
      <FigureValue figure={props.figure} />
      <div class="figure-below">
        <span class="quiet figure-source">{props.figure.source || figuresTexts.noSource}</span>
        <Deeds {...props} say={say} change={change} />
      </div>
      <Show when={isAsking() && plan()}>
        {(inPlan) => <NumberInPlace cell={props.figure.cell} name={props.name} plan={inPlan()} close={answered} />}
      </Show>
      <RangeOffer cell={props.figure.cell} plan={Math.max(0, index())} onDone={answered} />
    </li>
  );
}

function Deeds(props: FigureItemProps & { say: (own: string) => void; change: () => void }): JSX.Element {
  return (
    <span class="figure-deeds" role="group" aria-label={props.name}>
      <button
        type="button"
        class="word"
        aria-pressed={props.figure.standing === 'confirmed'}
        onClick={() => props.say(ownSources.confirmed(new Date()))}>
        {figuresTexts.mine}
      </button>
      <button
        type="button"
        class="word"
        aria-pressed={props.figure.standing === 'guess'}
        onClick={() => props.say(ownSources.guess(new Date()))}>
        {figuresTexts.guess}
      </button>
      <button type="button" class="word figure-change" onClick={() => props.change()}>
        {figuresTexts.change}
      </button>
    </span>
  );
}

/** The number as its field has it, of the plans that have the thing. */
function FigureValue(props: { figure: PlacedFigure }): JSX.Element {
  const { store } = usePage();
  const text = (): string => {
    const { cell, places } = props.figure;
    return places.map((place) => placeText(store.model(), store.values(), cell, place, localFormat)).join('; ');
  };
  return <span class="figure-value">{text()}</span>;
}
