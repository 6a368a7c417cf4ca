import type { Layout, PlacedArrow, PlacedBox, Point } from './layout';

/** An arrow as it is drawn, by paths of SVG, and the spot for a plan's letter. */
export interface ArrowLine {
  readonly from: number;
  readonly to: number;
  readonly line: string;
  readonly head: string;
  readonly letterAt: Point;
}

/** A point by its place along the arrows and across them. */
interface Along {
  readonly along: number;
  readonly across: number;
}

/** Most distance between the ends of two arrows at one side of a box, and least to its corners. */
const [endStep, corner] = [9, 8];
const head = { long: 8, half: 3.5 };

class Arrows {
  private readonly boxes: ReadonlyMap<number, PlacedBox>;
  /** By the middle of a rank, how far its longest box reaches to either side along the arrows. */
  private readonly reach = new Map<number, number>();
  private readonly starts: ReadonlyMap<PlacedArrow, number>;
  private readonly ends: ReadonlyMap<PlacedArrow, number>;

  constructor(private readonly layout: Layout) {
    this.boxes = new Map(layout.boxes.map((box) => [box.id, box]));
    for (const box of layout.boxes) {
      const middle = Math.round(this.turned(box).along);
      this.reach.set(middle, Math.max(this.reach.get(middle) ?? 0, this.long(box) / 2));
    }
    this.starts = this.spread('from', (points) => points[1]);
    this.ends = this.spread('to', (points) => points.at(-2));
  }

  all(): ArrowLine[] {
    return this.layout.arrows.map((arrow) => this.drawn(arrow));
  }

  private get isAcross(): boolean {
    return this.layout.direction === 'across';
  }

  private turned({ x, y }: Point): Along {
    return this.isAcross ? { along: x, across: y } : { along: y, across: x };
  }

  private text({ along, across }: Along): string {
    const [x, y] = this.isAcross ? [along, across] : [across, along];
    return `${x.toFixed(1)} ${y.toFixed(1)}`;
  }

  private long({ width, height }: PlacedBox): number {
    return this.isAcross ? width : height;
  }

  private wide({ width, height }: PlacedBox): number {
    return this.isAcross ? height : width;
  }

  /** Where arrows meet a side of a box: beside one another, in the order in which they come. */
  private spread(
    end: 'from' | 'to',
    next: (points: readonly Point[]) => Point | undefined,
  ): ReadonlyMap<PlacedArrow, number> {
    const bySide = new Map<string, PlacedArrow[]>();
    for (const arrow of this.layout.arrows) {
      const side = `${arrow[end]} ${this.isForward(arrow)}`;
      bySide.set(side, [...(bySide.get(side) ?? []), arrow]);
    }
    const places = new Map<PlacedArrow, number>();
    const come = ({ points }: PlacedArrow): number => this.turned(next(points) ?? { x: 0, y: 0 }).across;
    for (const side of bySide.values()) {
      side.sort((a, b) => come(a) - come(b));
      side.forEach((arrow, i) => {
        const box = this.boxes.get(arrow[end])!;
        const step = Math.min(endStep, (this.wide(box) - 2 * corner) / Math.max(1, side.length - 1));
        places.set(arrow, this.turned(box).across + (i - (side.length - 1) / 2) * step);
      });
    }
    return places;
  }

  private isForward({ from, to }: PlacedArrow): boolean {
    return this.turned(this.boxes.get(from)!).along <= this.turned(this.boxes.get(to)!).along;
  }

  /** Straight past the boxes of each rank between, so that the line never runs through one. */
  private between({ points }: PlacedArrow, sign: number): Along[] {
    return points.slice(1, -1).flatMap((point) => {
      const { along, across } = this.turned(point);
      const half = this.reach.get(Math.round(along));
      if (half === undefined) return [];
      return [
        { along: along - sign * half, across },
        { along: along + sign * half, across },
      ];
    });
  }

  /** Straight on to the edge of a box's rank, as longer boxes may stand beside it. */
  private past(box: PlacedBox, sign: number, point: Along): Along {
    const { along } = this.turned(box);
    const edge = along + sign * (this.reach.get(Math.round(along)) ?? 0);
    return { ...point, along: sign > 0 ? Math.max(edge, point.along) : Math.min(edge, point.along) };
  }

  private drawn(arrow: PlacedArrow): ArrowLine {
    const [from, to] = [this.boxes.get(arrow.from)!, this.boxes.get(arrow.to)!];
    const sign = this.isForward(arrow) ? 1 : -1;
    const start = { along: this.turned(from).along + (sign * this.long(from)) / 2, across: this.starts.get(arrow)! };
    const tip = { along: this.turned(to).along - (sign * this.long(to)) / 2, across: this.ends.get(arrow)! };
    const neck = { ...tip, along: tip.along - sign * head.long };
    const way = [start, this.past(from, sign, start), ...this.between(arrow, sign), this.past(to, -sign, neck), neck];
    const last = way.at(-3)!;
    const end = way.at(-2)!;
    return {
      from: arrow.from,
      to: arrow.to,
      line: way.map((point, i) => this.piece(way[i - 1], point)).join(''),
      head: this.headAt(tip, neck),
      letterAt: this.point({ along: (last.along + end.along) / 2, across: (last.across + end.across) / 2 }),
    };
  }

  private piece(before: Along | undefined, point: Along): string {
    if (before === undefined) return `M${this.text(point)}`;
    if (Math.abs(before.along - point.along) < 0.5) return '';
    if (Math.abs(before.across - point.across) < 0.5) return `L${this.text(point)}`;
    const half = (before.along + point.along) / 2;
    const bends = [
      { along: half, across: before.across },
      { along: half, across: point.across },
    ];
    return `C${[...bends, point].map((one) => this.text(one)).join(' ')}`;
  }

  private headAt(tip: Along, neck: Along): string {
    const corners = [
      { ...neck, across: neck.across - head.half },
      { ...neck, across: neck.across + head.half },
    ];
    return `M${[tip, ...corners].map((one) => this.text(one)).join('L')}Z`;
  }

  private point({ along, across }: Along): Point {
    return this.isAcross ? { x: along, y: across } : { x: across, y: along };
  }
}

/** The lines of a layout's arrows, in its order. */
export function arrowLines(layout: Layout): ArrowLine[] {
  return new Arrows(layout).all();
}
