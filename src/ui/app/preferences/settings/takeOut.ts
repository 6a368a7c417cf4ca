import { digitChoices, type Digits } from '../../../../present/table/digitChoices';
import { oneOf, type Setting } from './setting';

/** With which digits tables are taken out. */
export const takenDigitsSetting: Setting<Digits> = oneOf('take out digits', digitChoices, 'shown');
