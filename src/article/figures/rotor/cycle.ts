import { deg } from '@trochoid/compute/quantity/si.ts'

export const fullTurn = 2 * Math.PI
/** A chamber comes back to where it was after three turns of the shaft. */
export const cycle = 3 * fullTurn

/** Shaft angle of a chamber: each lags the one before it by a turn. */
export const chamberAngle = (shaft: number, which: number): number => (((shaft + which * fullTurn) % cycle) + cycle) % cycle

/** What a chamber is doing, by its shaft angle from smallest volume at the plugs. */
export const stroke = (angle: number): string => (angle < deg(270) ? 'expansion' : angle < deg(540) ? 'exhaust' : angle < deg(810) ? 'intake' : 'compression')

/** Invented ports of common timing, by the chamber's shaft angle. */
export const ports = { exhaust: { opens: deg(195), shuts: deg(588) }, intake: { opens: deg(572), shuts: deg(860) } } as const

export const isOpen = (angle: number, { opens, shuts }: { opens: number; shuts: number }): boolean => angle > opens && angle < shuts
