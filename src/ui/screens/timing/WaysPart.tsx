import { createMemo, Show, type JSX } from 'solid-js';
import { localFormat } from '../../app/preferences/localFormat';
import { waySetting } from '../../app/preferences/settings/timing';
import { resultQuestion } from '../../app/store/resultQuestion';
import type { StepTime } from '../../../trade/timeStudy';
import { ListChooser } from '../../kit/choosers/ListChooser';
import { MethodLink } from '../../kit/method/MethodLink';
import { Sentence } from '../../kit/sections/Sentence';
import { HeadedTable } from '../../kit/tables/HeadedTable';
import { offerOf, type TimeOffer } from '../../../present/timing/intoModel';
import { stepName } from '../../../present/timing/sentences';
import { chosenWays, wayNames, waysTable, waysFound, waysSentence, type WaysFound } from '../../../present/timing/ways';
import { moneyResults, waysWorth, worthSentence, type WaysWorth } from '../../../present/timing/waysWorth';
import { waysTexts } from '../../../present/timing/waysTexts';
import { OneOffer } from './OfferLine';
import { targetOf, usedIn, type StepPartProps } from './stepPart';

/** Two ways of doing the chosen step, compared: the difference, what it is worth, and both in a table. */
export function WaysPart(props: StepPartProps): JSX.Element {
  const names = createMemo(() => wayNames(props.found.batches));
  const kept = (which: 'one' | 'other'): string => props.choice.get(waySetting(which, props.found.step));
  const chosen = createMemo(() => chosenWays(names(), kept('one'), kept('other')));
  const compared = createMemo(() => {
    const ways = chosen();
    return ways && waysFound(props.found, ways, props.timing);
  });
  return (
    <section class="timing-ways" aria-labelledby="timing-ways">
      <h3 id="timing-ways">{waysTexts.heading}</h3>
      <Show when={compared()} fallback={<p>{waysTexts.howTo(stepName(props.found.step))}</p>}>
        {(ways) => (
          <>
            <Show when={names().length > 2}>
              <div class="timing-buttons">
                <WayChooser {...props} which="one" names={names()} chosen={chosen()?.[0] ?? ''} />
                <WayChooser {...props} which="other" names={names()} chosen={chosen()?.[1] ?? ''} />
              </div>
            </Show>
            <Compared {...props} ways={ways()} />
          </>
        )}
      </Show>
    </section>
  );
}

function WayChooser(
  props: StepPartProps & { which: 'one' | 'other'; names: readonly string[]; chosen: string },
): JSX.Element {
  const set = (name: string): void => props.choice.set(waySetting(props.which, props.found.step), name);
  return (
    <ListChooser
      class="way-chooser"
      label={<span class="chooser-label">{waysTexts[props.which]}</span>}
      options={props.names.map((name) => ({ value: name, label: name }))}
      chosen={props.chosen}
      choose={set}
    />
  );
}

/** What the difference is worth in the first result in money that it moves; in one that stays where it moves none. */
function worthOf(props: StepPartProps, ways: WaysFound): WaysWorth | undefined {
  const target = targetOf(props);
  if (target === undefined) return undefined;
  let unmoved: WaysWorth | undefined;
  for (const result of moneyResults(props.store.model(), props.plan)) {
    const question = resultQuestion(props.store, result, props.plan, undefined);
    const worth = question && waysWorth(question, target.cell, ways, usedIn(props), props.timing);
    if (worth?.change.isZero() === false) return worth;
    unmoved ??= worth;
  }
  return unmoved;
}

function Compared(props: StepPartProps & { ways: WaysFound }): JSX.Element {
  const noun = (): string => targetOf(props)?.noun ?? 'plant';
  const worth = createMemo(() => worthOf(props, props.ways));
  const offerWith = (time: StepTime): TimeOffer | undefined => {
    const target = targetOf(props);
    return target && offerOf(props.store.model(), props.plan, target.cell, time, usedIn(props), props.timing);
  };
  const quick = createMemo(() => offerWith(props.ways.second));
  const slow = createMemo(() => offerWith(props.ways.first));
  return (
    <>
      <p class="said-part" role="status">
        <Sentence phrase={waysSentence(props.ways, noun(), props.timing, localFormat)} />{' '}
        <Show when={worth()}>{(found) => <Sentence phrase={worthSentence(found(), localFormat)} />}</Show>
      </p>
      <HeadedTable label={waysTexts.table} table={waysTable(props.ways, localFormat)} captioned={false} />
      <p class="quiet">{waysTexts.caution}</p>
      <Show when={quick()}>{(found) => <OneOffer {...props} name={props.ways.quick} offer={found()} />}</Show>
      <Show when={slow()}>{(found) => <OneOffer {...props} name={props.ways.slow} offer={found()} />}</Show>
      <MethodLink choice={props.choice} entry="ways compared">
        {waysTexts.method}
      </MethodLink>
    </>
  );
}
