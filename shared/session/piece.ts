/** What the car does for a few seconds of a session. Speeds and load are means over it; load is the part of full-throttle torque at that shaft speed. */
export type Piece = { readonly seconds: number; readonly speed: number; readonly carSpeed: number; readonly load: number }
/** One round of a duty. */
export type Lap = { readonly name: string; readonly seconds: number; readonly length: number; readonly pieces: readonly Piece[] }

/** No piece shorter than this: coolers and engine answer in half a minute and more. */
const leastSeconds = 3

/** Puts samples together into pieces: time and energy stay what they were. */
export function piecesOf(samples: Iterable<Piece>): Piece[] {
  const pieces: Piece[] = []
  let seconds = 0, turns = 0, way = 0, work = 0
  const close = (): void => {
    // Load is weighed with shaft speed: heat goes with both.
    if (seconds > 0) pieces.push({ seconds, speed: turns / seconds, carSpeed: way / seconds, load: turns > 0 ? work / turns : 0 })
    seconds = turns = way = work = 0
  }
  for (const s of samples) {
    seconds += s.seconds
    turns += s.speed * s.seconds
    way += s.carSpeed * s.seconds
    work += s.load * s.speed * s.seconds
    if (seconds >= leastSeconds) close()
  }
  close()
  return pieces
}

export const lapOf = (name: string, samples: readonly Piece[]): Lap => {
  const pieces = piecesOf(samples)
  const sum = (of: (p: Piece) => number): number => pieces.reduce((total, p) => total + of(p), 0)
  return { name, pieces, seconds: sum((p) => p.seconds), length: sum((p) => p.carSpeed * p.seconds) }
}

/** The same round driven to cool down: slower, and hardly any throttle. */
export const coolDown = (lap: Lap): Lap => lapOf(`${lap.name}, cooling down`, lap.pieces.map((p) => ({ seconds: p.seconds / coolPace, speed: Math.max(p.speed * 0.45, 210), carSpeed: p.carSpeed * coolPace, load: 0.12 })))
const coolPace = 0.6
