import { Match, Show, Switch, type JSX } from 'solid-js';
import { localFormat } from '../../app/preferences/localFormat';
import { Link } from '../Link';
import type { JobState } from '../../app/jobs/createJob';
import './progress.css';

interface ProgressProps {
  readonly shown: JobState<'draws'>;
  readonly draws: number;
  readonly stop: () => void;
  readonly again: () => void;
}

/** How far the draws have come, and how to stop them. */
export function DrawsProgress(props: ProgressProps): JSX.Element {
  const percent = (): number => Math.floor(props.shown.share * 100);
  const made = (): string => localFormat.written(String(props.shown.found?.done ?? 0));
  const doing = (): string =>
    props.shown.phase === 'draws'
      ? `Making ${localFormat.written(String(props.draws))} draws`
      : 'Looking for what drives the spread';
  return (
    <div class="draw-progress">
      <Switch>
        <Match when={props.shown.state === 'busy'}>
          <progress max="100" value={percent()} aria-label={doing()} />
          <span>
            {doing()}, {percent()} %
          </span>
          <Link onPress={() => props.stop()}>Stop</Link>
        </Match>
        <Match when={props.shown.state === 'done'}>
          <span>{made()} draws made. The same seed gives the same draws.</span>
        </Match>
        <Match when={props.shown.state === 'stopped'}>
          <span role="status">Stopped after {made()} draws.</span>
          <Link onPress={() => props.again()}>Start again</Link>
        </Match>
        <Match when={props.shown.state === 'failed'}>
          <span class="message fault" role="alert">
            The draws could not be made: {props.shown.reason}
          </span>
          <Link onPress={() => props.again()}>Try again</Link>
        </Match>
      </Switch>
      <Show when={props.shown.restarted}>
        <span role="status">The worker that makes the draws ended; it was started again from the first draw.</span>
      </Show>
    </div>
  );
}
