import '@fontsource-variable/source-sans-3/wght.css';
import '@fontsource-variable/source-serif-4/wght.css';
import { startLanguage } from './ui/app/language/startLanguage';
import { loadEngine } from './ui/app/turns/loadEngine';
import { nextFrame } from './ui/app/turns/slice';
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

// What the page is about is drawn while the language loads.
await Promise.all([nextFrame(), startLanguage()]);
// Only now, as many texts are made where their file is loaded; and in turns, so that the page answers in between.
await loadEngine();
const { start } = await import('./ui/frame/start');
start();
