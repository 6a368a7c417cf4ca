import type { SownBatch } from './batches';

/** The boards and plants of a day at its fullest instant, the first of equals. */
export interface DayPicture {
  /** Boards in use, summed over the stages; boards in turnaround count. */
  readonly inUse: number;
  /** By stage at that instant. */
  readonly boards: readonly number[];
  /** Places held by plants, by stage at that instant. */
  readonly plants: readonly number[];
  /** For each stage, its own most boards in the day, which may be at another instant. */
  readonly most: readonly number[];
}

interface Turn {
  readonly at: number;
  readonly stage: number;
  readonly boards: number;
  readonly plants: number;
}

function turnsOf(batches: readonly SownBatch[]): Turn[] {
  const turns: Turn[] = [];
  for (const { stays } of batches) {
    for (const { stage, from, to, freed, plants, boards } of stays) {
      turns.push({ at: from, stage, boards, plants });
      turns.push({ at: to, stage, boards: freed === to ? -boards : 0, plants: -plants });
      if (freed !== to) turns.push({ at: freed, stage, boards: -boards, plants: 0 });
    }
  }
  return turns.sort((a, b) => a.at - b.at);
}

/** The boards and plants in each stage at an instant that moves forward. */
class Standing {
  private readonly boards: number[];
  private readonly plants: number[];
  private next = 0;

  constructor(
    private readonly turns: readonly Turn[],
    stages: number,
  ) {
    this.boards = Array.from({ length: stages }, () => 0);
    this.plants = Array.from({ length: stages }, () => 0);
  }

  /** Applies all changes up to and including an instant, the ends before it and the beginnings at it. */
  goTo(instant: number): void {
    for (let turn = this.turns[this.next]; turn && turn.at <= instant; turn = this.turns[(this.next += 1)]) {
      this.boards[turn.stage]! += turn.boards;
      this.plants[turn.stage]! += turn.plants;
    }
  }

  /** The instant of the next change; infinity after the last. */
  nextTurn(): number {
    return this.turns[this.next]?.at ?? Infinity;
  }

  picture(before: DayPicture | undefined): DayPicture {
    const inUse = this.boards.reduce((sum, n) => sum + n, 0);
    const most = this.boards.map((n, stage) => Math.max(n, before?.most[stage] ?? 0));
    if (before !== undefined && inUse <= before.inUse) return { ...before, most };
    return { inUse, boards: [...this.boards], plants: [...this.plants], most };
  }
}

/**
 * The boards and plants in use, day by day. A board freed at an instant can be used at that instant, and what lasts for
 * part of a day counts for the whole day.
 * @returns one picture for each day from day 0
 */
export function dayPictures(batches: readonly SownBatch[], days: number, stages: number): DayPicture[] {
  const standing = new Standing(turnsOf(batches), stages);
  return Array.from({ length: days }, (_, day) => {
    standing.goTo(day);
    let picture = standing.picture(undefined);
    while (standing.nextTurn() < day + 1) {
      standing.goTo(standing.nextTurn());
      picture = standing.picture(picture);
    }
    return picture;
  });
}
