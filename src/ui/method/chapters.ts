import { crop } from './crop';
import { draws } from './draws';
import type { Chapter } from './entry';
import { hands } from './hands';
import { knowing } from './knowing';
import { numbers } from './numbers';
import { oneAtATime } from './oneAtATime';

/** All that the app works out, in the order of the page. */
export const chapters: readonly Chapter[] = [numbers, crop, hands, oneAtATime, draws, knowing];
