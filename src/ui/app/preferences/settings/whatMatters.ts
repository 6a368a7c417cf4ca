import { names } from './setting';

/** Names of the results whose lines stand side by side; none for the usual ones. */
export const sideBySideSetting = names('side by side');
