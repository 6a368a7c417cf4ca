import { onCleanup } from 'solid-js';
import { paperFoot } from '../../../present/page/paperFoot';

/** Has the line below each printed page name the window’s title and the day; the style sheets for paper write it. */
export function createFootLine(): void {
  const write = (): void => {
    const foot = paperFoot(document.title, new Date(), navigator.language);
    document.documentElement.style.setProperty('--paper-foot', JSON.stringify(foot));
  };
  addEventListener('beforeprint', write);
  onCleanup(() => removeEventListener('beforeprint', write));
}
