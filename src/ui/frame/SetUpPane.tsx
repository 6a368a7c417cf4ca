import { lazy, Suspense, type JSX } from 'solid-js';
import { frameTexts } from '../../present/page/frameTexts';
import { usePage } from '../app/pageContext';

const SetUp = lazy(async () => ({ default: (await import('../screens/setUp/SetUp')).SetUp }));

/** The page on which a model of one's own is set up, in the place of the model that is open. */
export function SetUpPane(props: { onFile: (file: File) => void }): JSX.Element {
  const { choice } = usePage();
  return (
    <Suspense
      fallback={
        <p class="busy" role="status">
          {frameTexts.drawing}
        </p>
      }>
      <SetUp choice={choice} onFile={props.onFile} />
    </Suspense>
  );
}
