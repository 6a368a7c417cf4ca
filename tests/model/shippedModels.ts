import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readModel } from '../../src/files/readModel';
import type { Model } from '../../src/model/model';

const folder = join(import.meta.dirname, '../../models');

/** Every model in `models`, by file name. */
export const shippedModels: readonly (readonly [file: string, model: Model])[] = readdirSync(folder)
  .filter((file) => file.endsWith('.csv'))
  .map((file) => [file, readModel(readFileSync(join(folder, file))).model] as const);
