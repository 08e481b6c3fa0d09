import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { equivalentMassIn } from '@trochoid/compute/driveline/equivalentMassIn.ts'
import { axleRatio, clutchInertia, flywheelInertia, mass, rollingRadius, shaftInertia, wheels } from '@trochoid/compute/driveline/fields.ts'
import { inertiaSum } from '@trochoid/compute/driveline/inertiaSum.ts'
import { carMass, gear } from '@trochoid/compute/driveline/quantities.ts'
import { ratiosOf } from '@trochoid/compute/driveline/ratioIn.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { Bars } from './plot/Bars.tsx'
import { shown } from './plot/shown.ts'

type Here = { gear: string; ratio: number; rest: number; flywheel: number }
type Data = { all: Here[]; mass: number } | null

function from({ sheet }: Build): Data {
  const car = valueAt(sheet, mass), turned = valueAt(sheet, wheels), radius = valueAt(sheet, rollingRadius), finalDrive = valueAt(sheet, axleRatio)
  const shaft = valueAt(sheet, shaftInertia), flywheel = valueAt(sheet, flywheelInertia), clutch = valueAt(sheet, clutchInertia)
  if (car === null || turned === null || radius === null || finalDrive === null || shaft === null || flywheel === null || clutch === null) return null
  const all = Object.entries(ratiosOf).flatMap(([name, field]): Here[] => {
    const ratio = valueAt(sheet, field)
    if (ratio === null) return []
    const feels = (engine: number): number => equivalentMassIn({ mass: car, wheels: turned, radius, engine, ratio, finalDrive })
    const rest = feels(inertiaSum({ shaft, flywheel: 0, clutch }))
    return [{ gear: gear.choices[name as keyof typeof gear.choices], ratio, rest: rest - feels(0), flywheel: feels(inertiaSum({ shaft, flywheel, clutch })) - rest }]
  })
  return { all, mass: car }
}

export default figure<Data>({
  title: 'What the engine’s turning parts weigh, felt in each gear',
  from,
  summary(data, system) {
    const first = data?.all[0], last = data?.all.at(-1)
    if (!data || !first || !last) return 'The car’s mass, gears or inertias are not known, so nothing is drawn.'
    const m = shown(carMass, system)
    return `In ${first.gear} gear the car of ${m.say(data.mass)} has to speed up another ${m.say(first.rest + first.flywheel)} for the sake of what turns with the shaft, ${m.say(first.flywheel)} of it the flywheel. In ${last.gear} it is ${m.say(last.rest + last.flywheel)} and ${m.say(last.flywheel)}. The mass goes with the square of the gearing, so a light flywheel is felt in the low gears and lost in the high ones. Wheels and tyres are left out here: theirs is the same in every gear.`
  },
  Picture({ data, system }) {
    if (!data || data.all.length === 0) return null
    const m = shown(carMass, system)
    return <Bars says="Mass added by the flywheel and by the other parts on the shaft, gear by gear." named={[{ name: 'Shaft, rotors, clutch', class: 'fill' }, { name: 'Flywheel', class: 'fill-accent' }]}
      rows={data.all.map((h) => ({ name: `${h.gear.charAt(0).toUpperCase()}${h.gear.slice(1)}`, says: `${m.say(h.rest)} and ${m.say(h.flywheel)}`, parts: [{ of: m.of(h.rest), class: 'fill' }, { of: m.of(h.flywheel), class: 'fill-accent' }] }))} />
  },
  table(data, system) {
    const m = shown(carMass, system)
    return { head: ['Gear', 'Ratio', m.head('Shaft, rotors, clutch'), m.head('Flywheel'), 'Mass of the car and these, over the car’s'], rows: (data?.all ?? []).map((h) => [h.gear, writeNumber(h.ratio), writeNumber(m.of(h.rest)), writeNumber(m.of(h.flywheel)), writeNumber((data!.mass + h.rest + h.flywheel) / data!.mass)]) }
  },
})
