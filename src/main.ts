import './ui/style/tokens.css';
import './ui/style/page.css';
import './ui/style/head.css';
import './ui/style/opening.css';
import { startLanguage } from './ui/app/language/startLanguage';
import { showScheme } from './ui/app/preferences/shownScheme';
import { askForRest } from './ui/app/turns/askForRest';
import { loadEngine } from './ui/app/turns/loadEngine';
import { nextFrame, nextTurn } from './ui/app/turns/slice';

showScheme();
// What the page is about is drawn before anything else is asked for.
await Promise.all([nextFrame().then(askForRest), startLanguage()]);
// Only now, as many texts are made where their file is loaded; and in turns, so that the page answers in between.
await loadEngine();
const { start } = await import('./ui/frame/start');
await nextTurn();
start();
