import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { pumpFlow } from '@trochoid/compute/fuel/quantities.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'
import { shown } from './plot/shown.ts'

type Data = Drawn & { readonly idle: number; readonly speed: number; readonly left: number }

/** What the pump gives and what the engine burns, from idle to the last speed, and so what has to go back. */
export default lineFigure<Data>({
  title: 'What the pump gives, what the engine burns, what goes back',
  says: 'Pump flow, fuel burned and fuel returned over shaft speed at full throttle, idle first.',
  x: shaftSpeed, y: pumpFlow,
  from({ solved: { idle, points } }) {
    const at = [idle, ...points].filter((p) => p.values['fuel.pumpFlow'] !== undefined && p.values['fuel.volumeFlow'] !== undefined)
    const given = at.map((p) => p.values['fuel.pumpFlow']!), used = at.map((p) => p.values['fuel.volumeFlow']!)
    if (at.length < 2) return null
    const left = given.map((v, i) => v - used[i]!)
    const worst = left.reduce((a, v, i) => (v < left[a]! ? i : a), 0)
    return { idle: left[0]!, speed: at[worst]!.speed, left: left[worst]!, x: at.map((p) => p.speed), lines: [{ name: 'Given by the pump', y: given }, { name: 'Burned', y: used }, { name: 'Goes back', y: left.map((v) => Math.max(0, v)) }] }
  },
  summary: ({ idle, speed, left }, system) => `At idle ${shown(pumpFlow, system).say(idle)} go back to the tank. ${left >= 0 ? `Least goes back at ${shown(shaftSpeed, system).say(speed)}: ${shown(pumpFlow, system).say(left)}, all that is in hand.` : `At ${shown(shaftSpeed, system).say(speed)} the engine would burn ${shown(pumpFlow, system).say(-left)} more than the pump gives: the rail falls there.`} Pump flow falls as boost lifts the pressure it works against, just where more is burned.`,
  without: 'The pump of this build could not be worked out, so nothing is drawn.',
})
