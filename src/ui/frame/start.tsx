import { render } from 'solid-js/web';
import { shelfStorage } from '../app/shelf/shelfStorage';
import { App } from './App';
import '@fontsource-variable/source-sans-3/wght.css';
import '@fontsource-variable/source-serif-4/wght.css';
import '../style/headlines.css';
import '../style/numbers.css';
import '../style/inputs.css';
import '../style/columns.css';
import '../style/asked.css';
import '../style/layout.css';
import '../style/print.css';

/** Draws the program in the page. */
export function start(): void {
  const page = document.getElementById('app');
  if (page === null) throw new Error('The page has no element "app" to draw in.');
  // The name and what the page is about stand in it until there is something to draw.
  page.textContent = '';
  render(() => <App shelf={shelfStorage} />, page);
}
