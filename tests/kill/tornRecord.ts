import { appendFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Ends the log of the browser's database in a record of which only the head was written: checksum, length, kind. That
 * is what a kill between the two writings of a record leaves (LevelDB, "Log format": a record is a head of seven bytes
 * and its data). Chromium reads such a log, goes on writing behind the half record, and at its next start finds the
 * checksum wrong and begins an empty database.
 * @param profile folder of a browser that does not run
 */
export function tearRecord(profile: string): void {
  const databases = join(profile, 'Default', 'IndexedDB');
  const [folder] = readdirSync(databases).filter((name) => name.endsWith('.leveldb'));
  if (folder === undefined) throw new Error('the browser has no database');
  const logs = readdirSync(join(databases, folder)).filter((name) => name.endsWith('.log'));
  const last = logs.sort().at(-1);
  if (last === undefined) throw new Error('the database has no log');
  appendFileSync(join(databases, folder, last), Buffer.from([1, 2, 3, 4, 200, 0, 1]));
}
