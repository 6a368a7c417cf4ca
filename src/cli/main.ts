import { languageOf, type Catalogue } from '../language/catalogue';
import { speak } from '../language/language';
import { commandLanguage } from './commandLanguage';
import { programFile } from './programFile';

const words = process.argv.slice(2);
const tag = commandLanguage(words, process.env);
const texts = programFile(`./${tag}.json`, `../language/catalogues/${tag}.json`);
if (texts !== undefined) speak(languageOf(tag, JSON.parse(texts) as Catalogue));

// Only now, as many texts are made where their file is loaded.
const { runHere } = await import('./thisMachine');
runHere(words);
