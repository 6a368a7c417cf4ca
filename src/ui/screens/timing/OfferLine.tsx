import { createSignal, Show, type Accessor, type JSX } from 'solid-js';
import type { Decimal } from '../../../core/number';
import type { Phrase } from '../../../present/text/phrase';
import { Sentence } from '../../kit/sections/Sentence';
import { endText } from '../../../present/text/rangeEnds';
import { localFormat } from '../../app/preferences/localFormat';
import { printedUnit } from '../../../present/text/printedUnit';
import type { ScreenProps } from '../../app/screenProps';
import { Link } from '../../kit/Link';
import { keepFocus } from '../../kit/keepFocus';
import { editsOf, isPut, putSentence, type TimeOffer } from '../../../present/timing/intoModel';
import { intoModelTexts } from '../../../present/timing/intoModelTexts';
import { commonTexts } from '../../../present/text/commonTexts';

/** Enters offers into the model. */
export interface Putting {
  readonly put: (offer: TimeOffer, withRange: boolean) => void;
  /** What was put last; undefined once the model changed again. */
  readonly done: Accessor<Phrase | undefined>;
}

export function createPutting(props: Pick<ScreenProps, 'store' | 'plan'>): Putting {
  const [last, setLast] = createSignal<{ readonly sentence: Phrase; readonly version: number }>();
  const put = (offer: TimeOffer, withRange: boolean): void => {
    const model = props.store.model();
    props.store.finish();
    for (const edit of editsOf(offer, model, props.plan, withRange, new Date())) props.store.edit(edit);
    props.store.finish();
    setLast({ sentence: putSentence(offer, withRange, localFormat), version: props.store.version() });
  };
  return { put, done: () => (last()?.version === props.store.version() ? last()?.sentence : undefined) };
}

/** What was put into the model, with a button that takes it back. */
export function PutDone(props: Pick<ScreenProps, 'store'> & { putting: Putting }): JSX.Element {
  return (
    <div class="put-in" role="status">
      <Show when={props.putting.done()} keyed>
        {(sentence) => (
          <p>
            <Sentence phrase={sentence} />{' '}
            <button type="button" class="link" ref={keepFocus} onClick={() => props.store.undo()}>
              {commonTexts.takeBack}
            </button>
          </p>
        )}
      </Show>
    </div>
  );
}

interface OfferLineProps extends Pick<ScreenProps, 'goTo'> {
  readonly offer: TimeOffer;
  readonly put: Putting['put'];
}

/** A timed value beside the model's own number, with buttons that enter it. */
export function OfferLine(props: OfferLineProps): JSX.Element {
  const unit = (): string => printedUnit(props.offer.cell.unitText);
  const value = (): string => `${localFormat.full(props.offer.value)}\u00a0${unit()}`;
  const end = (number: Decimal): string => endText(number, props.offer.cell, localFormat);
  return (
    <>
      <p class="offer-values">
        <Sentence phrase={intoModelTexts.besideTimed(end(props.offer.today), localFormat.full(props.offer.value))} />{' '}
        <span class="unit">{unit()}</span>
      </p>
      <p class="offer-buttons">
        <Show when={!isPut(props.offer, false)} fallback={<span class="quiet">{intoModelTexts.hasIt}</span>}>
          <button type="button" class="press" onClick={() => props.put(props.offer, false)}>
            {intoModelTexts.useValue(value())}
          </button>
        </Show>
        <Show when={props.offer.range} fallback={<span class="quiet">{props.offer.noRange}</span>}>
          {(ends) => (
            <Show when={!isPut(props.offer, true)}>
              <button type="button" class="word" onClick={() => props.put(props.offer, true)}>
                {intoModelTexts.useWithRange(end(ends()[0]), end(ends()[1]))}
              </button>
            </Show>
          )}
        </Show>
        <Link onPress={() => props.goTo(props.offer.cell.id)}>{commonTexts.goToEntry}</Link>
      </p>
    </>
  );
}

/** An offer by itself, under a name. */
export function OneOffer(props: ScreenProps & { name: string; offer: TimeOffer }): JSX.Element {
  const putting = createPutting(props);
  return (
    <>
      <PutDone store={props.store} putting={putting} />
      <div class="offer" role="group" aria-label={props.name}>
        <p class="offer-head">
          <span>{props.name}</span>
          <span class="offer-entry">{props.offer.cell.label}</span>
        </p>
        <OfferLine offer={props.offer} put={putting.put} goTo={props.goTo} />
      </div>
    </>
  );
}
