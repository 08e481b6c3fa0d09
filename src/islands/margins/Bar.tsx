import type { Weighed } from '@trochoid/compute/build/margins.ts'

const width = 300, zero = 75, reach = 3

/** What is left, measured in the margin's own threshold: the upright line is the limit, the shaded strip is tight. */
export function Bar({ of }: { of: Weighed }) {
  const unit = (width - zero) / reach
  const at = (left: number): number => Math.max(2, Math.min(width, zero + (left / (of.tight || 1)) * unit))
  const x = of.left === null ? null : at(of.left)
  return (
    <svg viewBox={`0 0 ${width} 10`} preserveAspectRatio="none" aria-hidden="true" class="bar">
      <rect class="area" x={zero} width={unit} y="0" height="10" />
      <line class="thin" x1="0" x2={width} y1="5" y2="5" />
      {x !== null && <rect class={of.state === 'short' ? 'fill-bad' : of.state === 'tight' ? 'fill-warn' : 'fill'} x={Math.min(zero, x)} width={Math.abs(x - zero)} y="2.5" height="5" />}
      {of.band && <rect class="band" x={at(of.band[0])} width={Math.max(1, at(of.band[1]) - at(of.band[0]))} y="0.5" height="9" />}
      <line class="limit" x1={zero} x2={zero} y1="0" y2="10" />
    </svg>
  )
}
