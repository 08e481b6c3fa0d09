import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { fuelVolumeFlow } from '@trochoid/compute/fuel/quantities.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly speed: number; readonly most: number; readonly exact: number; readonly share: number }

/** Fuel at full throttle over speed, and what the same air would burn with nothing left over. */
export default lineFigure<Data>({
  title: 'Fuel at full throttle, and the part that is burned only in part',
  says: 'Fuel flow over shaft speed as set, and at the exact mixture with the same air.',
  x: shaftSpeed, y: fuelVolumeFlow,
  from({ solved: { points } }) {
    const at = points.filter((p) => p.values['fuel.volumeFlow'] !== undefined && p.values['engine.lambda'] !== undefined)
    const used = at.map((p) => p.values['fuel.volumeFlow']!), exact = at.map((p) => p.values['fuel.volumeFlow']! * Math.min(1, p.values['engine.lambda']!))
    if (at.length < 2) return null
    const worst = used.reduce((a, v, i) => (v > used[a]! ? i : a), 0)
    return {
      speed: at[worst]!.speed, most: used[worst]!, exact: exact[worst]!, share: 1 - exact[worst]! / used[worst]!, x: at.map((p) => p.speed),
      lines: [{ name: 'As the mixture is set', y: used }, { name: 'What its air can burn out', y: exact }],
      marks: [{ says: 'most', x: at[worst]!.speed, y: used[worst]!, below: true }],
    }
  },
  summary({ speed, most, exact, share }, system) {
    const q = shown(fuelVolumeFlow, system)
    return `Most is used at ${shown(shaftSpeed, system).say(speed)}: ${q.say(most)}. The same air could burn out ${q.say(exact)}. The rest, ${Math.round(100 * share)}\u202f% of the fuel, finds no air; it cools the charge, makes carbon monoxide and hydrogen, and leaves by the exhaust.`
  },
  without: 'This build has no full-throttle point, so nothing is drawn.',
})
