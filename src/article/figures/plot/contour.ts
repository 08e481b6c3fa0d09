import type { Spot } from './Lines.tsx'

/**
 * Lines of one level over a grid, `z[row][column]` above `x[column]` and `y[row]`: each cell is crossed by straight pieces between the
 * places on its edges where the level lies, and pieces that share an edge are joined. A cell with a gap is left out.
 */
export function contour(x: readonly number[], y: readonly number[], z: readonly (readonly (number | null)[])[], level: number): Spot[][] {
  const spots = new Map<string, Spot>()
  const beside = new Map<string, string[]>()
  const z0 = (r: number, c: number): number | null => z[r]?.[c] ?? null
  for (let r = 0; r + 1 < y.length; r++) {
    for (let c = 0; c + 1 < x.length; c++) {
      // Corners round the cell, each edge from one to the next.
      const round = [[r, c], [r, c + 1], [r + 1, c + 1], [r + 1, c]] as const
      if (round.some(([i, j]) => z0(i, j) === null)) continue
      const crossed = round.flatMap(([r1, c1], i) => {
        const [r2, c2] = round[(i + 1) % 4]!
        const a = z0(r1, c1)!, b = z0(r2, c2)!
        if (a < level === b < level) return []
        const id = [`${r1},${c1}`, `${r2},${c2}`].sort().join(' ')
        const t = (level - a) / (b - a)
        spots.set(id, [x[c1]! + t * (x[c2]! - x[c1]!), y[r1]! + t * (y[r2]! - y[r1]!)])
        return [id]
      })
      for (let i = 0; i + 1 < crossed.length; i += 2) join(beside, crossed[i]!, crossed[i + 1]!)
    }
  }
  return chains(beside).map((ids) => ids.map((id) => spots.get(id)!))
}

function join(beside: Map<string, string[]>, a: string, b: string): void {
  beside.set(a, [...(beside.get(a) ?? []), b])
  beside.set(b, [...(beside.get(b) ?? []), a])
}

/** Follows the pieces from every end, then what is left round in rings. */
function chains(beside: ReadonlyMap<string, readonly string[]>): string[][] {
  const left = new Set(beside.keys())
  const ends = [...left].filter((id) => beside.get(id)!.length === 1)
  return [...ends, ...beside.keys()].filter((id) => left.has(id)).flatMap((first) => {
    if (!left.has(first)) return []
    const line = [first]
    left.delete(first)
    for (;;) {
      const next = beside.get(line.at(-1)!)!.find((id) => left.has(id))
      if (next === undefined) break
      left.delete(next)
      line.push(next)
    }
    if (line.length > 2 && beside.get(line.at(-1)!)!.includes(first)) line.push(first)
    return line.length > 1 ? [line] : []
  })
}
