import { createFormat, type Format } from './format';

/** Numbers as this browser's first language writes them. */
export const here: Format = createFormat(navigator.language);
