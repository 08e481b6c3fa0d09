import { round } from './Sheet.tsx'

type Way = { readonly from: readonly [x: number, y: number]; readonly to: readonly [x: number, y: number]; readonly thick: number; readonly class?: string }

/** A flow drawn as wide as it is large: from one place to another, levelling out at both, its upper edge named. A sliver keeps a visible width. */
export function Ribbon({ from: [x0, y0], to: [x1, y1], thick, class: c = 'area' }: Way) {
  const w = Math.max(1.2, thick - 0.8)
  const m = (x0 + x1) / 2
  const at = (...of: readonly number[]): string => of.map(round).join(' ')
  return <path class={c} d={`M${at(x0, y0)}C${at(m, y0, m, y1, x1, y1)}V${round(y1 + w)}C${at(m, y1 + w, m, y0 + w, x0, y0 + w)}Z`} />
}
