/** The slope of the straight line of least squares through some points, in the unit of y by that of x. */
export function slope(points: readonly (readonly [x: number, y: number])[]): number {
  const mean = (at: 0 | 1): number => points.reduce((sum, point) => sum + point[at], 0) / points.length;
  const [x, y] = [mean(0), mean(1)];
  const both = points.reduce((sum, point) => sum + (point[0] - x) * (point[1] - y), 0);
  return both / points.reduce((sum, point) => sum + (point[0] - x) ** 2, 0);
}
