import { onCleanup } from 'solid-js';
import { paperFoot } from '../../../present/page/paperFoot';
import { pageLocale } from '../../app/language/pageLanguage';

/** Has the line below each printed page name the window’s title and the day; the style sheets for paper write it. */
export function createFootLine(): void {
  const write = (): void => {
    const foot = paperFoot(document.title, new Date(), pageLocale());
    document.documentElement.style.setProperty('--paper-foot', JSON.stringify(foot));
  };
  addEventListener('beforeprint', write);
  onCleanup(() => removeEventListener('beforeprint', write));
}
