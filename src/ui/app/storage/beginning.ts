import { reasonText } from './autosave';
import type { SaveState } from '../../../present/page/saveState';
import type { BrowserStorage } from './browserStorage';
import type { Model } from '../../../model/model';
import type { Origin } from '../store/snapshot';
import { openShipped } from '../files/opening';
import { carriedOn, isSession, reopen, type KeptSession } from './session';
import { shippedModels } from '../files/shippedModels';

/** What the page starts with. */
export interface Beginning {
  readonly model: Model;
  readonly origin: Origin;
  /** What was kept on this machine, if anything was. */
  readonly session: KeptSession | undefined;
  readonly kept: SaveState;
}

/** A shipped model in which nothing was changed is opened as it is shipped today. */
async function opened(session: KeptSession): Promise<{ model: Model; origin: Origin }> {
  const shipped = shippedModels.find(({ key }) => key === session.shipped);
  const isUntouched = session.changes.length === 0 && session.drafts.length === 0;
  return shipped !== undefined && isUntouched ? openShipped(shipped) : reopen(session);
}

/** The work as it was left; without any, the first shipped model. A storage that fails is said. */
export async function begin(storage: Pick<BrowserStorage, 'read' | 'readLast'>): Promise<Beginning> {
  const [first] = shippedModels;
  try {
    const found = await storage.read();
    if (!isSession(found)) return { ...(await openShipped(first)), session: undefined, kept: { state: 'not yet' } };
    const session = carriedOn(found, storage.readLast());
    return { ...(await opened(session)), session, kept: { state: 'kept', at: new Date(session.at) } };
  } catch (reason) {
    return { ...(await openShipped(first)), session: undefined, kept: { state: 'failed', reason: reasonText(reason) } };
  }
}
