const at = (n: number): number => Math.round(n * 10) / 10

/** A line through points, broken where one is missing. */
export function pathOf(points: readonly (readonly [number, number] | null)[]): string {
  let drawn = ''
  let pen = 'M'
  for (const point of points) {
    if (point === null) { pen = 'M'; continue }
    drawn += `${pen}${at(point[0])},${at(point[1])}`
    pen = 'L'
  }
  return drawn
}

/** The strip between two lines over the same x: one closed shape for each unbroken run. */
export function bandOf(points: readonly (readonly [x: number, low: number, high: number] | null)[]): string {
  let drawn = ''
  let run: (readonly [number, number, number])[] = []
  for (const point of [...points, null]) {
    if (point) { run.push(point); continue }
    if (run.length > 1) drawn += `${pathOf(run.map(([x, low]) => [x, low]))}${pathOf(run.map(([x, , high]) => [x, high] as const).reverse()).replace('M', 'L')}Z`
    run = []
  }
  return drawn
}
