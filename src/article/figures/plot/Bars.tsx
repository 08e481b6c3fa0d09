import { Sheet, round, Words } from './Sheet.tsx'

/** One bar: parts laid end to end from `from`, in the units shown; `says` stands at the right of its name. */
export type Row = { readonly name: string; readonly says: string; readonly from?: number; readonly parts: readonly { readonly of: number; readonly class: string }[] }
type Props = {
  says: string
  rows: readonly Row[]
  /** What each class stands for. */
  named?: readonly { readonly name: string; readonly class: string }[]
  /** An upright line over all bars. */
  limit?: { readonly at: number; readonly says: string } | undefined
}

const step = 52, head = 12, right = 636

/** Bars with their names above them, so that they stay readable on a phone. */
export function Bars({ says, rows, named = [], limit }: Props) {
  const ends = rows.map(({ from = 0, parts }) => from + parts.reduce((sum, { of }) => sum + of, 0))
  const most = Math.max(...ends, limit?.at ?? 0) || 1
  const x = (value: number): number => (right * value) / most
  const height = head + step * rows.length + (limit ? 30 : 6)
  return (
    <>
      <Sheet says={says} height={height}>
        {rows.map((row, i) => {
          let at = row.from ?? 0
          return (
            <g key={row.name}>
              {row.parts.map(({ of, class: c }, part) => {
                const left = at
                at += of
                return <rect key={part} class={c} x={round(x(left))} width={round(Math.max(0, x(of) - 1))} y={head + i * step + 24} height="15" />
              })}
              <text class="strong" x="0" y={head + i * step + 17}>{row.name}</text>
              <text x={right} y={head + i * step + 17} text-anchor="end">{row.says}</text>
            </g>
          )
        })}
        {limit && <line class="cross" x1={round(x(limit.at))} x2={round(x(limit.at))} y1="4" y2={height - 22} />}
        {limit && <Words x={x(limit.at) > 400 ? right : x(limit.at)} y={height - 5} anchor={x(limit.at) > 400 ? 'end' : 'start'}>{limit.says}</Words>}
      </Sheet>
      {named.length > 0 && <div class="chart"><p class="small key">{named.map(({ name, class: c }) => <span key={name}><svg viewBox="0 0 28 8" aria-hidden="true"><rect class={c} width="28" height="8" /></svg> {name}</span>)}</p></div>}
    </>
  )
}
