import type { Pixel } from '@trochoid/compute/boost/mapTrace.ts'
import { useEffect, useRef, useState } from 'preact/hooks'
import { pointsOf, withPoints, type Draft, type Target } from './draft.ts'

type Props = { picture: ImageBitmap; draft: Draft; target: Target; onDraft: (draft: Draft) => void; /** What a place in the picture stands for, in words. */ say: (at: Pixel) => string; onSet: (words: string) => void }
const glass = 132, times = 4
/** Closer than this on the screen, a press takes up a point rather than setting another. */
const near = 14
const steps: Readonly<Record<string, Pixel>> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }

/** The picture with what was traced over it. Points are set by pointer, finger or keys, and can be taken up again. */
export function Pad({ picture, draft, target, onDraft, say, onSet }: Props) {
  const { width, height } = picture
  const canvas = useRef<HTMLCanvasElement>(null)
  const lens = useRef<HTMLCanvasElement>(null)
  const [cursor, setCursor] = useState<Pixel>([Math.round(width / 2), Math.round(height / 2)])
  const held = useRef<number | null>(null)
  useEffect(() => { canvas.current!.getContext('2d')!.drawImage(picture, 0, 0) }, [picture])
  useEffect(() => {
    const on = lens.current!.getContext('2d')!
    on.imageSmoothingEnabled = false
    on.clearRect(0, 0, glass, glass)
    const seen = glass / times
    on.drawImage(picture, cursor[0] - seen / 2, cursor[1] - seen / 2, seen, seen, 0, 0, glass, glass)
    on.strokeStyle = '#c00'
    on.beginPath()
    on.moveTo(glass / 2, 0); on.lineTo(glass / 2, glass); on.moveTo(0, glass / 2); on.lineTo(glass, glass / 2)
    on.stroke()
  }, [picture, cursor])

  const points = pointsOf(draft, target)
  const put = (next: readonly Pixel[]) => onDraft(withPoints(draft, target, next))
  const placeOf = (e: PointerEvent): { at: Pixel; scale: number } => {
    const box = canvas.current!.getBoundingClientRect()
    const scale = width / box.width
    const inside = (v: number, most: number): number => Math.max(0, Math.min(most, v))
    return { at: [inside((e.clientX - box.left) * scale, width), inside((e.clientY - box.top) * scale, height)], scale }
  }
  const add = (at: Pixel) => {
    put([...points, at])
    onSet(`Point ${points.length + 1} set at ${say(at)}.`)
  }
  const down = (e: PointerEvent) => {
    const { at, scale } = placeOf(e)
    const close = points.findIndex(([x, y]) => Math.hypot(x - at[0], y - at[1]) < near * scale)
    ;(e.currentTarget as Element).setPointerCapture(e.pointerId)
    setCursor(at)
    held.current = close >= 0 ? close : points.length
    if (close < 0) add(at)
  }
  const move = (e: PointerEvent) => {
    const { at } = placeOf(e)
    setCursor(at)
    if (held.current !== null) put(points.map((p, i) => (i === held.current ? at : p)))
  }
  const key = (e: KeyboardEvent) => {
    const step = steps[e.key]
    if (step) {
      const by = e.shiftKey ? 10 : 1
      setCursor(([x, y]) => [Math.max(0, Math.min(width, x + by * step[0])), Math.max(0, Math.min(height, y + by * step[1]))])
    } else if (e.key === 'Enter' || e.key === ' ') add(cursor)
    else if (e.key === 'Backspace' || e.key === 'Delete') { put(points.slice(0, -1)); onSet(points.length > 0 ? 'The last point was taken away.' : 'There is no point to take away.') }
    else return
    e.preventDefault()
  }
  const size = Math.max(width, height) / 150
  const path = (of: readonly Pixel[]) => of.map(([x, y]) => `${x},${y}`).join(' ')
  const drawn: readonly (readonly [Target, readonly Pixel[], string])[] = [
    ...(['flow 0', 'flow 1', 'ratio 0', 'ratio 1'] as const).map((t) => [t, pointsOf(draft, t), 'axis-place'] as const),
    ['surge', draft.surge, 'surge'], ...draft.strokes.map((s) => [s.id, s.points, s.kind] as const),
  ]
  return (
    <div class="pad-and-lens">
      <div class="pad" role="application" tabindex={0} aria-label="Picture of the map" aria-describedby="pad-keys" onPointerDown={down} onPointerMove={move} onPointerUp={() => { held.current = null }} onPointerCancel={() => { held.current = null }} onKeyDown={key}>
        <canvas ref={canvas} width={width} height={height} />
        <svg viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
          {drawn.map(([of, at, kind]) => (
            <g key={of} class={`stroke ${kind}${of === target ? ' now' : ''}`}>
              {kind !== 'axis-place' && <polyline points={path(at)} />}
              {at.map(([x, y], i) => <circle key={i} cx={x} cy={y} r={of === target ? size * 1.2 : size * 0.8} />)}
            </g>
          ))}
          <path class="cursor" d={`M${cursor[0] - 3 * size},${cursor[1]}h${6 * size}M${cursor[0]},${cursor[1] - 3 * size}v${6 * size}`} />
        </svg>
      </div>
      <div class="lens">
        <canvas ref={lens} width={glass} height={glass} aria-hidden="true" />
        <p class="small">{say(cursor)}</p>
        <p id="pad-keys" class="small soft">Press to set a point, drag to shift one. By keys: arrows move the cross, with Shift ten times as far, Enter sets a point, Backspace takes the last one away.</p>
      </div>
    </div>
  )
}
