import { directions, reaches, type Direction, type Reach } from '../../../../present/together/choices';
import { oneOf, type Setting } from './setting';

/** How many steps the picture around an entry goes each way. */
export const reachSetting: Setting<Reach> = oneOf('together reach', reaches, '1');

/** Which way the picture reads. */
export const directionSetting: Setting<Direction> = oneOf('together direction', directions, 'across');
