import type { Point } from '@trochoid/compute/build/point.ts'

/** The engine at one shaft speed as a compressor map sees it. SI. */
export type OnMap = { readonly speed: number; readonly flow: number; readonly ratio: number; readonly estimated: boolean }

/** The full-throttle points of a solve that have a place on the map, in the order of shaft speed. */
export const engineLine = (points: readonly Point[]): OnMap[] => points.flatMap(({ speed, values }) => {
  const flow = values['boost.correctedFlow'], ratio = values['boost.pressureRatio']
  return flow === undefined || ratio === undefined || ratio < 1 ? [] : [{ speed, flow, ratio, estimated: (values['boost.overLowestLine'] ?? 1) < 1 }]
})

/** The part that stands on measured lines, and the part below them, which ends where the other begins. */
export function byTrust(line: readonly OnMap[]): { readonly known: readonly OnMap[]; readonly estimated: readonly OnMap[] } {
  const first = line.findIndex((p) => !p.estimated)
  return first < 0 ? { known: [], estimated: line } : { known: line.slice(first), estimated: line.slice(0, first + 1) }
}

/** The point whose shaft speed lies nearest. */
export const nearest = (line: readonly OnMap[], speed: number): OnMap | undefined =>
  line.reduce<OnMap | undefined>((a, p) => (a === undefined || Math.abs(p.speed - speed) < Math.abs(a.speed - speed) ? p : a), undefined)
