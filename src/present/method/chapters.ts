import { budget } from './budget';
import { crop } from './crop';
import { drawsChapter } from './draws';
import type { Chapter } from './entry';
import { hands } from './hands';
import { knowing } from './knowing';
import { numbers } from './numbers';
import { oneAtATime } from './oneAtATime';
import { timing } from './timing';

/** All that the app computes, in the order of the page. */
export const chapters: readonly Chapter[] = [numbers, crop, hands, timing, oneAtATime, drawsChapter, knowing, budget];
