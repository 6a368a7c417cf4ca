import { lazy, Match, Suspense, Switch, type JSX } from 'solid-js';
import { frameTexts } from '../../present/page/frameTexts';
import type { ScreenQuestion } from '../../present/page/questions';
import { Waiting } from '../kit/sections/Waiting';
import { usePage } from '../app/pageContext';
import { Headlines } from './Headlines';

const SetUp = lazy(async () => ({ default: (await import('../screens/setUp/SetUp')).SetUp }));
const Teach = lazy(async () => ({ default: (await import('../screens/teach/Teach')).Teach }));

interface AlonePaneProps {
  readonly question: ScreenQuestion;
  readonly onFile: (file: File) => void;
}

/** A page that stands in the place of the model that is open. */
export function AlonePane(props: AlonePaneProps): JSX.Element {
  const { choice } = usePage();
  return (
    <Suspense fallback={<Waiting class="busy">{frameTexts.drawing}</Waiting>}>
      <Switch>
        <Match when={props.question === 'set up'}>
          <SetUp choice={choice} onFile={props.onFile} />
        </Match>
        <Match when={props.question === 'teach'}>
          <Teach choice={choice} headlines={<Headlines />} />
        </Match>
      </Switch>
    </Suspense>
  );
}
