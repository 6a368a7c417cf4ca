import { createFormat, type Format } from '../../../present/text/numberFormat';
import { pageLocale } from '../language/pageLanguage';

/** Numbers as this browser's first language writes them. */
export const localFormat: Format = createFormat(pageLocale());
