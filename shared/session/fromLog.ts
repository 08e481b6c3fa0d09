import { type Log } from '../log/log.ts'
import { lapOf, type Lap, type Piece } from './piece.ts'

/** A longer stand between two rows than this is a stop of the logger, not driving. */
const longest = 5

/** A drive from a log with time, shaft speed, car speed and throttle: throttle stands for load, manifold pressure is not asked. */
export function lapFromLog({ count, of }: Log, name: string): { readonly ok: true; readonly lap: Lap } | { readonly ok: false; readonly says: string } {
  const { time, speed, carSpeed, throttle } = of
  if (!time || !speed || !carSpeed || !throttle) {
    const missing = [[speed, 'shaft speed'], [carSpeed, 'car speed'], [throttle, 'throttle']].filter(([have]) => !have).map(([, what]) => what)
    return { ok: false, says: `A drive needs time, shaft speed, car speed and throttle; this file has no ${missing.join(' and no ')}.` }
  }
  const samples: Piece[] = []
  for (let i = 0; i + 1 < count; i++) {
    const seconds = time[i + 1]! - time[i]!
    if (seconds > longest || ![speed[i], carSpeed[i], throttle[i]].every(Number.isFinite)) continue
    samples.push({ seconds, speed: Math.max(0, speed[i]!), carSpeed: Math.max(0, carSpeed[i]!), load: Math.min(1, Math.max(0, throttle[i]!)) })
  }
  const lap = lapOf(name, samples)
  if (lap.seconds < 20) return { ok: false, says: 'Fewer than twenty seconds of this file can be driven: look at its columns of time and speed.' }
  return { ok: true, lap }
}
