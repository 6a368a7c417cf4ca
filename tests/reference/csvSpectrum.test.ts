import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parseRecords } from '../../src/files/csv';
import { decodeText } from '../../src/files/decodeText';

// Source: csv-spectrum 2.0.0 (npm; repository max-mapper/csv-spectrum), 12 CSV files with the JSON that they mean.
const folder = dirname(createRequire(import.meta.url).resolve('csv-spectrum/package.json'));
const names = readdirSync(join(folder, 'csvs')).map((file) => file.replace(/\.csv$/, ''));

function textOf(name: string): string {
  const decoded = decodeText(readFileSync(join(folder, 'csvs', `${name}.csv`)));
  if ('problem' in decoded) throw new Error(decoded.problem.message);
  return decoded.text;
}

function expectedOf(name: string): unknown {
  return JSON.parse(readFileSync(join(folder, 'json', `${name}.json`), 'utf8'));
}

/** Records as objects by the header's names. */
function objectsOf(text: string): Record<string, string | undefined>[] {
  const [header, ...records] = parseRecords(text, ',').filter(({ row }) => row > 0);
  return records.map(({ fields }) => Object.fromEntries(header!.fields.map((name, i) => [name, fields[i]])));
}

describe('csv-spectrum', () => {
  it('has its twelve files', () => {
    expect(names).toHaveLength(12);
  });

  it.each(names.filter((name) => name !== 'location_coordinates'))('%s reads as published', (name) => {
    expect(objectsOf(textOf(name))).toEqual(expectedOf(name));
  });

  // The corpus differs from itself here: its JSON is one object, not a list of one, with another telephone number.
  it('location_coordinates reads as published but for its telephone number', () => {
    const expected = expectedOf('location_coordinates') as Record<string, string>;
    const phone = 'Contact Phone Number';
    const [read, ...more] = objectsOf(textOf('location_coordinates'));
    expect(more).toEqual([]);
    expect(read).toEqual({ ...expected, [phone]: read![phone] });
    expect(read![phone]).toMatch(/^\d+$/);
  });

  it.each(names)('%s is given back by its raw pieces', (name) => {
    expect(
      parseRecords(textOf(name), ',')
        .map(({ raw }) => raw)
        .join(''),
    ).toBe(textOf(name));
  });

  // The npm package holds the CRLF files as such; a checkout of the repository may not.
  it('has CRLF where its names say so', () => {
    for (const name of names) expect([name, textOf(name).includes('\r\n')]).toEqual([name, name.endsWith('_crlf')]);
  });
});
