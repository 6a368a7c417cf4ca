import { momentWriter } from '../../../present/text/dates';
import { pageLocale } from '../language/pageLanguage';

/** Moments as this browser's first language writes them. */
export const localMoment = momentWriter(pageLocale());
