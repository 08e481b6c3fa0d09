import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { clampLeft } from '@trochoid/compute/driveline/clampLeft.ts'
import { clampShareLeft } from '@trochoid/compute/driveline/clampShareLeft.ts'
import { clutchTorqueTwoSides } from '@trochoid/compute/driveline/clutchTorqueTwoSides.ts'
import { clampLossSpeed, clampLostToSpeed, clampLostToWear, clutchClamp, facingInner, facingOuter, frictionCoverSide, frictionFlywheelSide, plates } from '@trochoid/compute/driveline/fields.ts'
import { frictionRadiusUniformWear } from '@trochoid/compute/driveline/frictionRadiusUniformWear.ts'
import { clutchTorque } from '@trochoid/compute/driveline/quantities.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { Curves, level, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { mean: number; fresh: number; worn: number }
type Data = { all: Here[]; sheet: Here; sides: readonly [number, number]; asked: number; speed: number } | null

function from({ sheet, solved }: Build): Data {
  const peak = solved.points.reduce<{ speed: number; torque: number } | null>((a, { speed, values }) => ((values['engine.torque'] ?? 0) > (a?.torque ?? 0) ? { speed, torque: values['engine.torque']! } : a), null)
  const clamp = valueAt(sheet, clutchClamp), outer = valueAt(sheet, facingOuter), inner = valueAt(sheet, facingInner), count = valueAt(sheet, plates)
  const one = valueAt(sheet, frictionFlywheelSide), two = valueAt(sheet, frictionCoverSide)
  const worn = valueAt(sheet, clampLostToWear), thrown = valueAt(sheet, clampLostToSpeed), lossSpeed = valueAt(sheet, clampLossSpeed)
  if (!peak || clamp === null || outer === null || inner === null || count === null || one === null || two === null || worn === null || thrown === null || lossSpeed === null) return null
  const radius = frictionRadiusUniformWear({ outer, inner })
  const left = clampShareLeft({ worn, thrown, speed: peak.speed, lossSpeed })
  const at = (mean: number): Here => {
    const holds = (pressed: number): number => clutchTorqueTwoSides({ clamp: pressed, radius, plates: count, flywheelSide: mean, coverSide: mean })
    return { mean, fresh: holds(clamp), worn: holds(clampLeft({ fresh: clamp, left })) }
  }
  return { all: steps(0.15, 0.5, 7).map(at), sheet: at((one + two) / 2), sides: [one, two], asked: peak.torque, speed: peak.speed }
}

export default figure<Data>({
  title: 'What the facing should hold, over the mean friction of its two sides',
  from,
  summary(data, system) {
    if (!data) return 'The facing of this build is not known, or it has no full-throttle point, so nothing is drawn.'
    const m = shown(clutchTorque, system), needed = (data.sheet.mean * data.asked) / data.sheet.worn
    return `The sides have ${writeNumber(data.sides[0])} and ${writeNumber(data.sides[1])}, a mean of ${writeNumber(data.sheet.mean)}: ${m.say(data.sheet.fresh)} new and standing still, ${m.say(data.sheet.worn)} half worn at ${shown(shaftSpeed, system).say(data.speed)}, where the engine has its greatest torque, ${m.say(data.asked)}. There the clutch begins to slip when the mean falls to ${writeNumber(needed)}. Torque goes in proportion to the mean, whichever side has the more.`
  },
  Picture({ data, system }) {
    if (!data) return null
    const m = shown(clutchTorque, system), over = (of: 'fresh' | 'worn'): Spot[] => data.all.map((h) => [h.mean, m.of(h[of])])
    return <Curves says="Torque that clamp load and facing hold, new and worn, over the mean friction of both sides, with the engine’s greatest torque." x="Mean friction of the two sides" y={m.head('Torque')} reach={[0]}
      lines={[{ name: 'New, standing still', class: 'line', spots: over('fresh') }, { name: 'Half worn, at the speed of greatest torque', class: 'line two', dash: long, spots: over('worn') }]}
      levels={level('Engine’s greatest torque', 'line dash', [data.all[0]!.mean, data.all.at(-1)!.mean], m.of(data.asked))}
      marks={[{ at: [data.sheet.mean, m.of(data.sheet.worn)], says: 'the sheet', to: 'right' }]} />
  },
  table(data, system) {
    const m = shown(clutchTorque, system)
    return { head: ['Mean friction', m.head('New, standing still'), m.head('Half worn, at speed')], rows: (data?.all ?? []).map((h) => [writeNumber(h.mean), writeNumber(m.of(h.fresh)), writeNumber(m.of(h.worn))]) }
  },
})
