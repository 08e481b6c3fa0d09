import { fullTurn } from './cycle.ts'

/** What the outline of housing and rotor is drawn from, metres. */
export type Form = { readonly radius: number; readonly eccentricity: number; readonly shift: number }
type Place = readonly [x: number, y: number]

const third = (2 * Math.PI) / 3

/** A place moved square to the way it goes, outward. */
const moved = ([x, y]: Place, [dx, dy]: Place, by: number): Place => {
  const length = Math.hypot(dx, dy)
  return [x + (by * dy) / length, y - (by * dx) / length]
}

/** The housing where an apex stands at a rotor angle: the trochoid, moved out by the shift. */
export function housingAt({ radius: R, eccentricity: e, shift }: Form, angle: number): Place {
  const at: Place = [e * Math.cos(3 * angle) + R * Math.cos(angle), e * Math.sin(3 * angle) + R * Math.sin(angle)]
  const along: Place = [-3 * e * Math.sin(3 * angle) - R * Math.sin(angle), 3 * e * Math.cos(3 * angle) + R * Math.cos(angle)]
  return moved(at, along, shift)
}

/** A place on a flank of the rotor, `v` from π/6 at one apex to π/2 at the next: the inner envelope, from the rotor's middle. */
function flankAt({ radius: R, eccentricity: e, shift }: Form, v: number): Place {
  const spot = (of: number): Place => {
    const s = Math.sqrt(1 - ((3 * e) / R) ** 2 * Math.sin(3 * of) ** 2)
    const u = R + 2 * e * s * Math.cos(3 * of), w = ((3 * e * e) / R) * Math.sin(6 * of)
    return [u * Math.cos(2 * of) - w * Math.sin(2 * of), u * Math.sin(2 * of) + w * Math.cos(2 * of)]
  }
  const [x0, y0] = spot(v - 1e-5), [x1, y1] = spot(v + 1e-5)
  return moved(spot(v), [x1 - x0, y1 - y0], shift)
}

const between = (from: number, to: number, count: number): number[] => Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count)

/** The middle of the rotor at a shaft angle: on the eccentric, towards the plugs at nothing. */
export const middleAt = ({ eccentricity: e }: Form, shaft: number): Place => [e * Math.cos(shaft + Math.PI / 2), e * Math.sin(shaft + Math.PI / 2)]

/** One flank of the turned rotor, from its trailing to its leading apex; the first faces the chamber that is smallest at nothing. */
export function flank(form: Form, shaft: number, which: number): Place[] {
  const [cx, cy] = middleAt(form, shaft)
  const turn = shaft / 3 - Math.PI / 6 + which * third
  return between(Math.PI / 6, Math.PI / 2, 24).map((v) => {
    const [x, y] = flankAt(form, v)
    return [cx + x * Math.cos(turn) - y * Math.sin(turn), cy + x * Math.sin(turn) + y * Math.cos(turn)]
  })
}

/** The housing along one chamber, from its trailing to its leading apex. */
export const wall = (form: Form, shaft: number, which: number): Place[] => {
  const from = Math.PI / 6 + shaft / 3 + which * third
  return between(from, from + third, 36).map((angle) => housingAt(form, angle))
}

/** The whole housing, closed. */
export const housing = (form: Form): Place[] => between(0, fullTurn, 120).map((angle) => housingAt(form, angle))
