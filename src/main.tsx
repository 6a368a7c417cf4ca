import '@fontsource-variable/source-sans-3/wght.css';
import '@fontsource-variable/source-serif-4/wght.css';
import { render } from 'solid-js/web';
import { App } from './ui/frame/App';
import { shelfStorage } from './ui/app/shelf/shelfStorage';
import './ui/style/tokens.css';
import './ui/style/page.css';
import './ui/style/head.css';
import './ui/style/headlines.css';
import './ui/style/numbers.css';
import './ui/style/inputs.css';
import './ui/style/columns.css';
import './ui/style/asked.css';
import './ui/style/layout.css';
import './ui/style/print.css';

const page = document.getElementById('app');
if (page === null) throw new Error('The page has no element "app" to draw in.');
// The name stands in the page until there is something to draw.
page.textContent = '';
render(() => <App shelf={shelfStorage} />, page);
