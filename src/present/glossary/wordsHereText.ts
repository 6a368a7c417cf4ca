/** Above the words of a screen; apart from them, so that they need not be loaded with it. */
export const wordsHereText = 'Words on this page';
