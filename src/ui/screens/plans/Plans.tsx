import { createMemo, lazy, Show, type JSX } from 'solid-js';
import { differencesSentence, differingEntries } from '../../../present/plans/differing';
import { plansFinding } from '../../../present/plans/finding';
import { comparedResults, resultRows } from '../../../present/plans/sideBySide';
import { commonTexts } from '../../../present/text/commonTexts';
import { plansTexts } from '../../../present/plans/texts';
import { namesAmong } from '../../../present/text/entryNames';
import { usePage } from '../../app/pageContext';
import { localFormat } from '../../app/preferences/localFormat';
import type { ScreenProps } from '../../app/screenProps';
import { createPlanChoice } from '../../app/store/comparedPlans';
import { PrintWord } from '../../kit/paper/PrintWord';
import { LazySection } from '../../kit/sections/LazySection';
import { LiveText } from '../../kit/sections/LiveText';
import { Sentence } from '../../kit/sections/Sentence';
import { CompareTwo } from './CompareTwo';
import { Differences } from './Differences';
import { OneChange } from './OneChange';
import { createPlanChanges } from './planChanges';
import { PlanList } from './PlanList';
import { ResultBars } from './ResultBars';
import { SideBySide } from './SideBySide';
import '../../kit/sections/answers.css';
import '../../kit/sections/section.css';
import '../../kit/charts/curve.css';
import './styles.css';

const OnePlanPart = lazy(async () => ({ default: (await import('./onePlan/OnePlanPart')).OnePlanPart }));

/** Plans: all of them, what can be done with each, and what they come to side by side. */
export function Plans(props: ScreenProps): JSX.Element {
  const page = usePage();
  const changes = createPlanChanges(page);
  const names = createMemo(() => props.store.shape().plans.map(({ name }) => name));
  const nameOf = createMemo(() => namesAmong(props.store.shape().cells));
  const cells = createMemo(() => comparedResults(props.store.shape(), props.choice.result()));
  const rows = createMemo(() => {
    const [model, values] = [props.store.model(), props.store.values()];
    return resultRows({ model, values, nameOf: nameOf(), format: localFormat }, cells());
  });
  const finding = createMemo(() => plansFinding(rows(), names(), props.choice.result(), localFormat));
  const [chosen, choosePlan] = createPlanChoice(page.store);
  const changed = (): number => (chosen() === -1 ? props.plan : chosen());
  return (
    <section class="question-screen plans" aria-labelledby="plans">
      <h2 class="heard" id="plans">
        {plansTexts.heading}
      </h2>
      <LiveText>
        <p class="finding">
          <Sentence phrase={finding()} />
        </p>
      </LiveText>
      <PlanList changes={changes} />
      <Show when={rows().length > 0}>
        <SideBySide rows={rows()} names={names()} goTo={props.goTo} />
        <Show when={names().length > 1}>
          <ResultBars rows={rows()} names={names()} />
        </Show>
      </Show>
      <Show when={names().length > 1}>
        <CompareTwo names={names()} />
      </Show>
      <OneChange {...props} changes={changes} names={names()} changed={changed()} choosePlan={choosePlan} />
      <Show when={names().length > 1}>
        <WhatDiffers {...props} names={names()} changed={changed()} />
      </Show>
      <LazySection id="plans-one-budget" class="one-plan" heading={plansTexts.onePlan}>
        {() => <OnePlanPart {...props} names={names()} index={changed()} choosePlan={choosePlan} />}
      </LazySection>
      <PrintWord part="question">{commonTexts.printQuestion}</PrintWord>
    </section>
  );
}

/** What the plan that is changed is given otherwise than the reference. */
function WhatDiffers(props: ScreenProps & { names: readonly string[]; changed: number }): JSX.Element {
  const nameOf = createMemo(() => namesAmong(props.store.shape().cells));
  const entries = createMemo(() => {
    const [model, values] = [props.store.model(), props.store.values()];
    return differingEntries({ model, values, plans: [0, props.changed], nameOf: nameOf(), format: localFormat });
  });
  const plans = (): [string, string] => [props.names[0] ?? '', props.names[props.changed] ?? ''];
  return (
    <section class="part" aria-labelledby="plans-differ">
      <h3 id="plans-differ">{plansTexts.differences}</h3>
      <LiveText>
        <p>
          <Sentence phrase={differencesSentence(plans()[1], plans()[0], entries().length, props.changed === 0)} />
        </p>
      </LiveText>
      <Show when={entries().length > 0}>
        <Differences entries={entries()} plans={plans()} goTo={props.goTo} />
      </Show>
    </section>
  );
}
