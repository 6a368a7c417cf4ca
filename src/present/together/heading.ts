import { wording } from '../../language/wording';

/** What the picture of a model's entries is called, where it stands and where a link leads back to it. */
export const togetherHeading = wording`How it hangs together`;

/** The link that opens it. */
export const seeTogether = wording`See how it hangs together`;
