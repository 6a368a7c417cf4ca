import { Match, Show, Switch, type JSX } from 'solid-js';
import { localFormat } from '../../app/preferences/localFormat';
import { Link } from '../Link';
import type { JobState } from '../../app/jobs/createJob';
import { drawsDoing } from '../../../present/howSure/drawsProgress';
import { drawsTexts } from '../../../present/howSure/drawsTexts';
import { commonTexts } from '../../../present/text/commonTexts';
import './progress.css';

interface ProgressProps {
  readonly shown: JobState<'draws'>;
  readonly draws: number;
  readonly stop: () => void;
  readonly again: () => void;
}

/** How many draws have been made, and a button that stops them. */
export function DrawsProgress(props: ProgressProps): JSX.Element {
  const percent = (): number => Math.floor(props.shown.share * 100);
  const isBusy = (): boolean => props.shown.state === 'busy';
  const made = (): string => localFormat.written(String(props.shown.found?.done ?? 0));
  const doing = (): string => drawsDoing(props.shown.phase, props.draws, localFormat);
  const onPaper = (): string =>
    (props.shown.found?.done ?? 0) > 0
      ? drawsTexts.printedAfter(made(), localFormat.written(String(props.draws)))
      : commonTexts.notComputed;
  return (
    <div class="draw-progress" data-waits={isBusy() ? '' : undefined}>
      <Switch>
        <Match when={props.shown.state === 'busy'}>
          <progress class="off-paper" max="100" value={percent()} aria-label={doing()} />
          <span class="off-paper">{drawsTexts.underWay(doing(), percent())}</span>
          <Link class="off-paper" onPress={() => props.stop()}>
            {commonTexts.stop}
          </Link>
          <span class="on-paper">{onPaper()}</span>
        </Match>
        <Match when={props.shown.state === 'done'}>
          <span>{drawsTexts.done(made())}</span>
        </Match>
        <Match when={props.shown.state === 'stopped'}>
          <span role="status">{drawsTexts.stopped(made())}</span>
          <Link onPress={() => props.again()}>{drawsTexts.again}</Link>
        </Match>
        <Match when={props.shown.state === 'failed'}>
          <span class="message fault" role="alert">
            {drawsTexts.failed(props.shown.reason)}
          </span>
          <Link onPress={() => props.again()}>{commonTexts.tryAgain}</Link>
        </Match>
      </Switch>
      <Show when={props.shown.restarted}>
        <span role="status">{drawsTexts.restarted}</span>
      </Show>
    </div>
  );
}
