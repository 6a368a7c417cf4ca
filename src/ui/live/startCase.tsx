import { render } from 'solid-js/web';
import { readLiveCase } from '../../files/live/liveCase';
import { LivePage } from './LivePage';

/** Draws the case that is in the page. */
export function startCase(): void {
  const page = document.getElementById('app');
  const block = document.getElementById('live-case');
  if (page === null || block === null) throw new Error('The page has no place for a case.');
  const live = readLiveCase(block.textContent);
  if ('problem' in live) {
    // The case as it was sent stays in sight.
    const said = document.createElement('p');
    said.className = 'message fault';
    said.textContent = live.problem.message;
    page.prepend(said);
  } else {
    page.textContent = '';
    render(() => <LivePage live={live} />, page);
  }
}
