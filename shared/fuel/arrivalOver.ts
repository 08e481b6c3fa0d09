import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelChange, stageShare, turnsLate, turnTime, wallShare, wallTime } from './quantities.ts'

/** Fuel of each charge that arrives while the secondaries take over part of it: injected without a step, arriving late and by way of the walls. */
export const about = {
  name: 'Fuel that arrives through a hand-over',
  in: {
    part: role(stageShare, 'x_s', 'Part that the secondaries take over'), late: turnsLate, held: role(turnsLate, 'N_h', 'Charges that the primaries hold on'), turn: turnTime,
    wall: role(wallShare, 'X_1', 'Share of the primaries that wets the wall'), settling: role(wallTime, 'τ_1', 'Settling time of that film'),
    farWall: role(wallShare, 'X_2', 'Share of the secondaries that wets the wall'), farSettling: role(wallTime, 'τ_2', 'Settling time of that film, secondaries'), fed: role(stageShare, 'x_w', 'Part of the wall’s demand that the controller makes up for'),
  },
  out: { least: role(fuelChange, 'δ_min', 'Leanest charge, fuel more than meant'), most: role(fuelChange, 'δ_max', 'Richest charge, fuel more than meant') },
  steps: [
    'Each stage has a film: of what it injects a share goes onto the wall, and in each turn the film gives off what its settling time lets it.',
    'The controller may make up for the film: it injects so much that film and shot together give what is wanted, as far as that is possible.',
    'What the secondaries put in arrives some charges late; a shot that falls between two charges is parted among them.',
    'The primaries step down at once, or hold on for some charges.',
    'Over the charges from the hand-over until the films are still, the leanest and richest are kept.',
  ],
  source: ['aquino-1981', 'wall film of each stage, charge by charge, with transport added (from memory)'],
  notes: 'The film of each charge keeps its mass exactly. The fuel of a charge is taken as steady through the hand-over.',
} as const satisfies About

const before = 2
export const arrivalOver = formula<typeof about>('arrival-over', {}, ({ part, late, held, turn, wall, settling, farWall, farSettling, fed }) => {
  /** A step that begins between two charges: how much of it a charge has. */
  const begun = (charge: number, at: number): number => Math.min(Math.max(charge + 1 - at, 0), 1)
  const film = (share: number, time: number, start: number) => {
    const off = time > 0 ? 1 - Math.exp(-turn / time) : 1
    let mass = (share * start) / off
    return (wanted: number): number => {
      const given = mass * off
      const exact = share < 1 ? (wanted - given) / (1 - share) : wanted
      const shot = Math.max(0, wanted + fed * (exact - wanted))
      mass += share * shot - given
      return (1 - share) * shot + given
    }
  }
  const near = film(wall, settling, 1), far = film(farWall, farSettling, 0)
  const secondaries = Array.from({ length: before }, () => 0)
  let least = 0, most = 0
  const charges = Math.ceil(late + held + (6 * Math.max(settling, farSettling)) / turn) + 8
  const whole = Math.floor(late)
  for (let k = 0; k < charges; k++) {
    secondaries.push(far(part))
    const sent = (charge: number): number => secondaries[charge + before] ?? 0
    const arrives = near(1 - part * begun(k, held)) + sent(k - whole) + (sent(k - whole - 1) - sent(k - whole)) * (late - whole)
    least = Math.min(least, arrives - 1)
    most = Math.max(most, arrives - 1)
  }
  return { least, most }
})
