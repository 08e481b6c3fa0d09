import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import type { ComponentChildren } from 'preact'
import { short } from '../../../islands/working/value.ts'
import type { Frame } from './frame.ts'
import { Key, type Named } from './Lines.tsx'

/** The paper a figure is drawn on, said in a few words to those who do not see it, with the key of its lines below. */
export function Sheet({ says, height, named, children }: { says: string; height: number; named?: readonly Pick<Named, 'name' | 'class' | 'dash'>[]; children: ComponentChildren }) {
  return <div class="chart"><svg viewBox={`0 0 640 ${height}`} role="img" aria-label={says}>{children}</svg>{named && <Key of={named} />}</div>
}

/** Rules, ticks and names of both axes. */
export function Axes({ on, x, y }: { on: Frame; x: string; y: string }) {
  return (
    <>
      {on.y.ticks.map((t) => <g key={t}><line class="grid" x1={on.left} x2={on.right} y1={round(on.y.at(t))} y2={round(on.y.at(t))} /><text x={on.left - 8} y={round(on.y.at(t)) + 5} text-anchor="end">{short(writeNumber(t, 5))}</text></g>)}
      {on.x.ticks.map((t) => <g key={t}><line class="axis" x1={round(on.x.at(t))} x2={round(on.x.at(t))} y1={on.bottom} y2={on.bottom + 5} /><text x={round(on.x.at(t))} y={on.bottom + 24} text-anchor="middle">{short(writeNumber(t, 5))}</text></g>)}
      <line class="axis" x1={on.left} x2={on.right} y1={on.bottom} y2={on.bottom} />
      <text class="strong" x={on.right} y={on.height - 6} text-anchor="end">{x}</text>
      <text class="strong" x="0" y="16">{y}</text>
    </>
  )
}

/** Words in a drawing, kept readable over its lines. */
export function Words({ x, y, anchor = 'start', strong, children }: { x: number; y: number; anchor?: 'start' | 'middle' | 'end'; strong?: boolean; children: ComponentChildren }) {
  return <text class={strong ? 'strong' : undefined} x={round(x)} y={round(y)} text-anchor={anchor} stroke="var(--paper)" stroke-width="4" stroke-linejoin="round" paint-order="stroke">{children}</text>
}

export const round = (value: number): number => Math.round(value * 10) / 10
