import { createFormat, type Format } from '../../../present/text/numberFormat';

/** Numbers as this browser's first language writes them. */
export const localFormat: Format = createFormat(navigator.language);
