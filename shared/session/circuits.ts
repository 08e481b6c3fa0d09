/** A stretch of a circuit: its length, the radius of its line where it bends, and how it climbs. Metres; a gradient is rise over length. */
export type Segment = { readonly length: number; readonly radius?: number; readonly gradient?: number }
export type Circuit = { readonly name: string; readonly note: string; readonly segments: readonly Segment[] }

const straight = (length: number, gradient = 0): Segment => ({ length, gradient })
const corner = (length: number, radius: number, gradient = 0): Segment => ({ length, radius, gradient })

/** Invented circuits: no place is meant. */
export const circuits = {
  quarry: {
    name: 'Quarry ring (invented)', note: 'Short and twisty: much second and third gear, little air.',
    segments: [straight(380), corner(70, 30), straight(140), corner(60, 22), straight(210, 0.03), corner(90, 45), straight(120), corner(55, 18), straight(300, -0.03), corner(80, 38), straight(160), corner(110, 60), straight(90), corner(50, 25)],
  },
  meadow: {
    name: 'Long meadow (invented)', note: 'Fast and open: long pulls, much air.',
    segments: [straight(1100), corner(150, 65), straight(520), corner(220, 120), straight(640), corner(90, 40), straight(780, 0.02), corner(180, 90), straight(430, -0.02), corner(260, 150), straight(350), corner(110, 48)],
  },
  ridge: {
    name: 'Ridge road (invented)', note: 'Long climbs at full throttle and low speed, then down again.',
    segments: [straight(450, 0.07), corner(60, 25, 0.07), straight(520, 0.08), corner(70, 30, 0.06), straight(600, 0.07), corner(120, 55), straight(480, -0.07), corner(70, 32, -0.06), straight(560, -0.08), corner(90, 45, -0.05), straight(620, -0.06), corner(80, 35)],
  },
} as const satisfies Readonly<Record<string, Circuit>>

export type CircuitId = keyof typeof circuits
