import type { Naming } from '../core/dimension';
import { namedKinds, type Unit } from '../core/unit';

/** Calls kinds of quantity what the units around a formula call them, so that a fault speaks of `EUR/h` as they do. */
export class Spelling {
  private readonly units = new Set<Unit>();

  note(unit: Unit): void {
    this.units.add(unit);
  }

  /** By the words of the units noted so far. A kind that two units call differently goes by its base unit. */
  naming(): Naming {
    const names = new Map<string, string>();
    for (const [kind, name] of [...this.units].flatMap(namedKinds)) {
      names.set(kind, (names.get(kind) ?? name) === name ? name : kind);
    }
    return (kind) => names.get(kind) ?? kind;
  }
}
