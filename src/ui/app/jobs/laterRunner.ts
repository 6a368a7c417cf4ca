import type { JobRunner } from '../../../jobs/runner';
import { reasonText } from '../reasonText';

/** The page's runner, which loads with the first job that is asked for. */
export const laterRunner: JobRunner = {
  ask: (job, sheet, request, listener) => {
    let isWanted = true;
    let cancel = (): void => {
      isWanted = false;
    };
    import('./pageRunner').then(
      ({ pageRunner }) => {
        if (isWanted) cancel = pageRunner.ask(job, sheet, request, listener);
      },
      (reason: unknown) => {
        if (isWanted) listener.refused(reasonText(reason));
      },
    );
    return () => cancel();
  },
};
