import { wording } from '../../language/wording';

/** Above the words of a screen; apart from them, so that they need not be loaded with it. */
export const wordsHereText = wording`Words on this page`;
