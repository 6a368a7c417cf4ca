import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readModelText } from '../../../src/files/readModel';
import { buildModel } from '../../../src/model/buildModel';
import { renamedModel } from '../../../src/model/change/renamedModel';
import type { Edited } from '../../../src/model/edit';
import type { Model } from '../../../src/model/model';
import { modelOf } from '../table';

const shown = ({ sheet, title, cells, ids, lines, plans, faults, notices }: Model): unknown => ({
  sheet,
  title,
  cells,
  ids,
  lines,
  plans: plans.map(({ name, contents }) => [name, contents]),
  faults,
  notices,
});

describe('a model with an entry renamed', () => {
  it.each(['transplant-hire', 'plug-media', 'three-stage', 'channel-or-bench', 'density-lesson'])(
    '%s is what its sheet would be built to, whichever entry is renamed',
    (name) => {
      let { model } = readModelText(readFileSync(`models/${name}.csv`, 'utf8'));
      for (const cell of model.cells) {
        const after = renamedModel(model, cell.row, `renamed_${cell.id}`) as Edited;
        expect(after.changed).toEqual([]);
        model = after.model;
      }
      expect(shown(model)).toEqual(shown(buildModel(model.sheet)));
    },
  );

  it('shows its new name where it has no label, and keeps every checked formula', () => {
    const before = modelOf('boards [board]: 90\ntwice [board]: 2 * boards | correlation: ');
    const { model } = renamedModel(before, 2, 'all_boards') as Edited;
    expect(model.cells[0]).toMatchObject({ name: 'all_boards', label: 'all boards' });
    expect(model.plans[0]!.contents[1]).toMatchObject({ text: '2 * all_boards' });
    expect(model.plans[0]!.structure).toBe(before.plans[0]!.structure);
  });

  it('is built anew where messages may have the old name in them', () => {
    const before = modelOf('boards [board]: 90\ntwice [board]: 2 * bords');
    const { model, changed } = renamedModel(before, 2, 'bords') as Edited;
    expect(changed).toBeUndefined();
    expect(model.faults).toEqual([]);
  });

  it('refuses what is no name', () => {
    expect(renamedModel(modelOf('boards [board]: 90'), 2, 'Boards')).toMatchObject({ code: 'name-text' });
  });
});
