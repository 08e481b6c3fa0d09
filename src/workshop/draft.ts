import { scaleOf, tracedMap, type Axes, type Axis, type Pixel, type Traced } from '@trochoid/compute/boost/mapTrace.ts'
import { airGasConstant } from '@trochoid/compute/formula/constants.ts'

type AxisDraft = { readonly at: readonly [Pixel | null, Pixel | null]; readonly value: readonly [number | null, number | null]; readonly scale: Axis['scale'] }
/** A line being traced: its speed in rad/s, or its efficiency as a share. */
export type Stroke = { readonly kind: 'line' | 'island'; readonly id: number; readonly value: number | null; readonly points: readonly Pixel[] }
/** What is being traced, as far as it goes. */
export type Draft = {
  readonly name: string
  readonly temperature: number | null
  readonly pressure: number | null
  /** Whether the flow axis is printed by mass or by volume at the reference conditions. */
  readonly by: 'mass' | 'volume'
  readonly flow: AxisDraft
  readonly ratio: AxisDraft
  readonly surge: readonly Pixel[]
  readonly strokes: readonly Stroke[]
}
/** What the next point belongs to: a place on an axis, the surge line, or a stroke by its id. */
export type Target = 'flow 0' | 'flow 1' | 'ratio 0' | 'ratio 1' | 'surge' | number

const bare: AxisDraft = { at: [null, null], value: [null, null], scale: 'linear' }
export const empty: Draft = { name: '', temperature: null, pressure: null, by: 'mass', flow: bare, ratio: bare, surge: [], strokes: [] }

const axisOf = (target: Target): readonly ['flow' | 'ratio', 0 | 1] | null => (typeof target === 'string' && target !== 'surge' ? [target.slice(0, -2) as 'flow' | 'ratio', Number(target.at(-1)) as 0 | 1] : null)
const exchanged = <T,>(pair: readonly [T, T], which: 0 | 1, by: T): readonly [T, T] => (which === 0 ? [by, pair[1]] : [pair[0], by])

/** The points of a target, in the order in which they were set. */
export function pointsOf(draft: Draft, target: Target): readonly Pixel[] {
  const axis = axisOf(target)
  if (axis) { const at = draft[axis[0]].at[axis[1]]; return at ? [at] : [] }
  return target === 'surge' ? draft.surge : draft.strokes.find(({ id }) => id === target)?.points ?? []
}
/** The draft with other points for a target; an axis takes the last of them. */
export function withPoints(draft: Draft, target: Target, points: readonly Pixel[]): Draft {
  const axis = axisOf(target)
  if (axis) return { ...draft, [axis[0]]: { ...draft[axis[0]], at: exchanged(draft[axis[0]].at, axis[1], points.at(-1) ?? null) } }
  if (target === 'surge') return { ...draft, surge: points }
  return { ...draft, strokes: draft.strokes.map((s) => (s.id === target ? { ...s, points } : s)) }
}
export const withAxisValue = (draft: Draft, of: 'flow' | 'ratio', which: 0 | 1, value: number | null): Draft => ({ ...draft, [of]: { ...draft[of], value: exchanged(draft[of].value, which, value) } })
export const withStroke = (draft: Draft, kind: Stroke['kind']): readonly [Draft, number] => {
  const id = 1 + Math.max(0, ...draft.strokes.map((s) => s.id))
  return [{ ...draft, strokes: [...draft.strokes, { kind, id, value: null, points: [] }] }, id]
}

/** Both axes, once they are fixed. */
export function axesOf({ flow, ratio }: Draft): Axes | null {
  const whole = ({ at: [a, b], value: [low, high], scale }: AxisDraft): Axis | null => (a && b && low !== null && high !== null ? { at: [a, b], value: [low, high], scale } : null)
  const [x, y] = [whole(flow), whole(ratio)]
  return x && y ? { flow: x, ratio: y } : null
}
/** Values of a place in the picture as the axes print them. */
export function valuesAt(draft: Draft, at: Pixel): readonly [flow: number, ratio: number] | null {
  const axes = axesOf(draft)
  return axes && (scaleOf(axes)?.values(at) ?? null)
}

/** The map as far as it is traced, or what is still missing, in the order in which one would do it. */
export function mapOf(draft: Draft): Traced {
  const no = (says: string): Traced => ({ ok: false, says })
  const axes = axesOf(draft)
  if (!axes) return no('Fix both axes: for each, set two places where a value is printed, and type the values.')
  if (draft.temperature === null || draft.pressure === null) return no('State the reference temperature and pressure that the picture was corrected to: they are never assumed.')
  const unnamed = draft.strokes.find(({ value, points }) => value === null && points.length > 0)
  if (unnamed) return no(unnamed.kind === 'line' ? 'One speed line has no speed yet.' : 'One line of equal efficiency has no efficiency yet.')
  const density = draft.by === 'volume' ? draft.pressure / (airGasConstant.value * draft.temperature) : 1
  const flow: Axis = { ...axes.flow, value: [axes.flow.value[0] * density, axes.flow.value[1] * density] }
  const of = (kind: Stroke['kind']) => draft.strokes.filter((s) => s.kind === kind && s.points.length > 0)
  return tracedMap({
    axes: { ...axes, flow }, name: draft.name.trim(), referenceTemperature: draft.temperature, referencePressure: draft.pressure, surge: draft.surge,
    lines: of('line').map(({ value, points }) => ({ speed: value!, points })),
    islands: of('island').map(({ value, points }) => ({ efficiency: value!, points })),
  })
}
