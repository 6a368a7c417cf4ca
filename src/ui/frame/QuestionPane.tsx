import { createEffect, ErrorBoundary, lazy, Match, on, Suspense, Switch, type JSX } from 'solid-js';
import { frameTexts } from '../../present/page/frameTexts';
import { showsResults, type ScreenQuestion } from '../../present/page/questions';
import type { ScreenProps } from '../app/screenProps';
import { Link } from '../kit/Link';
import { Waiting } from '../kit/sections/Waiting';
import { usePage } from '../app/pageContext';

// The screens bring the chart library, which is large, so they load after the numbers.
const Plans = lazy(async () => ({ default: (await import('../screens/plans/Plans')).Plans }));
const Beds = lazy(async () => ({ default: (await import('../screens/beds/Beds')).Beds }));
const WhatMatters = lazy(async () => ({ default: (await import('../screens/whatMatters/WhatMatters')).WhatMatters }));
const Breakeven = lazy(async () => ({ default: (await import('../screens/breakeven/Breakeven')).Breakeven }));
const Method = lazy(async () => ({ default: (await import('../screens/method/Method')).Method }));
const Timing = lazy(async () => ({ default: (await import('../screens/timing/Timing')).Timing }));
const TheCase = lazy(async () => ({ default: (await import('../screens/theCase/TheCase')).TheCase }));
const Together = lazy(async () => ({ default: (await import('../screens/together/Together')).Together }));
const HowSure = lazy(async () => ({ default: (await import('../screens/howSure/HowSure')).HowSure }));

const NotYet = lazy(async () => ({ default: (await import('./NotYet')).NotYet }));

/** The question beside the numbers. */
export function QuestionPane(props: { question: ScreenQuestion }): JSX.Element {
  const { store, compared, choice, navigation, lesson } = usePage();
  const given: ScreenProps = {
    store,
    choice,
    goTo: navigation.goTo,
    get plan() {
      return compared.plan();
    },
    get against() {
      return compared.against();
    },
  };
  return (
    <ErrorBoundary
      fallback={(error: unknown, again) => (
        <Failed error={error} when={[props.question, store.version()]} again={again} />
      )}>
      <Suspense fallback={<Waiting class="busy">{frameTexts.drawing}</Waiting>}>
        <Switch>
          <Match when={lesson.isHiding() && showsResults(props.question)}>
            <NotYet />
          </Match>
          <Match when={props.question === 'plans'}>
            <Plans {...given} />
          </Match>
          <Match when={props.question === 'beds'}>
            <Beds {...given} />
          </Match>
          <Match when={props.question === 'what matters'}>
            <WhatMatters {...given} />
          </Match>
          <Match when={props.question === 'breakeven'}>
            <Breakeven {...given} />
          </Match>
          <Match when={props.question === 'method'}>
            <Method choice={choice} />
          </Match>
          <Match when={props.question === 'how sure'}>
            <HowSure {...given} />
          </Match>
          <Match when={props.question === 'timing'}>
            <Timing {...given} />
          </Match>
          <Match when={props.question === 'together'}>
            <Together {...given} />
          </Match>
          <Match when={props.question === 'the case'}>
            <TheCase {...given} />
          </Match>
        </Switch>
      </Suspense>
    </ErrorBoundary>
  );
}

/** Says that a screen could not be shown; another question or an edit tries again. */
function Failed(props: { error: unknown; when: unknown; again: () => void }): JSX.Element {
  createEffect(
    on(
      () => props.when,
      () => props.again(),
      { defer: true },
    ),
  );
  const text = (): string => (props.error instanceof Error ? props.error.message : String(props.error));
  return (
    <div class="empty" role="alert">
      <p class="message fault">{frameTexts.notShown(text())}</p>
      <p>
        {frameTexts.untouched} <Link onPress={() => location.reload()}>{frameTexts.loadAgain}</Link>
      </p>
    </div>
  );
}
