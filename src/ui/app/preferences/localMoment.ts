import { momentWriter } from '../../../present/text/dates';

/** Moments as this browser's first language writes them. */
export const localMoment = momentWriter(navigator.language);
