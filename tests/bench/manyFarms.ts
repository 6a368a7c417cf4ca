// A large model: the shipped one many times over, each farm with numbers of its own, wages and prices shared by all of
// them, and their margins added up. Depth and fan-out are those of a real model.
import type { Sheet, SheetRow } from '../../src/model/sheet';

/** Inputs that every farm reads from the first. */
const shared = new Set(['wage', 'on_cost', 'allowance', 'interest_rate', 'price', 'lower_price', 'weeks_per_year']);
/** Columns that speak of one farm as a whole. */
const leftOut = new Set(['crop', 'correlation', 'budget']);

/** Uniform numbers from 0 to 1 from a seed: the generator "mulberry32", in the public domain. */
function random(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let x = Math.imul(state ^ (state >>> 15), state | 1);
    x ^= x + Math.imul(x ^ (x >>> 7), x | 61);
    return ((x ^ (x >>> 14)) >>> 0) / 4294967296;
  };
}

class Farms {
  private readonly rows: SheetRow[] = [];
  private readonly own: ReadonlySet<string>;

  constructor(
    private readonly one: Sheet,
    private readonly next: () => number,
  ) {
    const names = one.rows.map(({ fields }) => fields.get('name') ?? '');
    this.own = new Set(names.filter((name) => name !== '' && !shared.has(name)));
  }

  /** Adds rows for a farm until there are so many cells. */
  add(farm: number, cells: number): void {
    for (const { fields } of this.one.rows) {
      const name = fields.get('name') ?? '';
      const again = farm > 0 && shared.has(name);
      if (name !== '' && !again && this.rows.length < cells) this.push(this.renamed(fields, farm));
    }
  }

  push(fields: ReadonlyMap<string, string>): void {
    this.rows.push({ row: this.rows.length + 2, fields });
  }

  get size(): number {
    return this.rows.length;
  }

  sheet(): Sheet {
    return { columns: this.one.columns.filter((column) => !leftOut.has(column)), rows: this.rows };
  }

  private renamed(fields: ReadonlyMap<string, string>, farm: number): Map<string, string> {
    const rename = (text: string): string =>
      text.replace(/[a-z][a-z0-9_]*/g, (name) => (this.own.has(name) ? `${name}_${farm}` : name));
    const kept = [...fields].filter(([column]) => !leftOut.has(column));
    const renamed = kept.map(([column, text]): [string, string] =>
      column === 'name' || column === 'formula' || column.startsWith('plan:') ? [column, rename(text)] : [column, text],
    );
    return new Map(renamed).set('formula', rename(this.number(fields)));
  }

  /** An input with a range gets a number in it. */
  private number(fields: ReadonlyMap<string, string>): string {
    const [low, high] = [fields.get('low') ?? '', fields.get('high') ?? ''];
    if (low === '' || high === '') return fields.get('formula') ?? '';
    const number = Number(low) + this.next() * (Number(high) - Number(low));
    return String(Math.min(Number(high), Number(number.toPrecision(4))));
  }
}

/** So many farms that they and the sum of their margins make just so many cells. */
export function manyFarms(one: Sheet, cells: number, seed: number): Sheet {
  const farms = new Farms(one, random(seed));
  let whole = 0;
  const perFarm = one.rows.filter(({ fields }) => (fields.get('name') ?? '') !== '').length;
  for (; farms.size + perFarm < cells; whole += 1) farms.add(whole, cells);
  const margins = Array.from({ length: whole }, (_, farm) => `margin_${farm}`);
  farms.push(
    new Map([
      ['name', 'all_margins'],
      ['unit', 'EUR/year'],
      ['formula', margins.join(' + ')],
    ]),
  );
  farms.add(whole, cells);
  return farms.sheet();
}
