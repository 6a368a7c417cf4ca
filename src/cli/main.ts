import { existsSync, readFileSync } from 'node:fs';
import { languageOf, type Catalogue } from '../language/catalogue';
import { speak } from '../language/language';
import { commandLanguage } from './commandLanguage';

const words = process.argv.slice(2);
const tag = commandLanguage(words, process.env);

// The texts of a language stand beside the built program, and in a folder of the sources.
const places = [`./${tag}.json`, `../language/catalogues/${tag}.json`].map((path) => new URL(path, import.meta.url));
const place = places.find((one) => existsSync(one));
if (place !== undefined) speak(languageOf(tag, JSON.parse(readFileSync(place, 'utf8')) as Catalogue));

// Only now, as many texts are made where their file is loaded.
const { runHere } = await import('./thisMachine');
runHere(words);
