import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import coilAtSpeed from '@trochoid/compute/spark/coilAtSpeed.calc.ts'
import { coilEnergy, coilVoltage } from '@trochoid/compute/spark/quantities.ts'
import { asked } from './asked.ts'
import { figure, type Build } from './figure.ts'
import { Curves, level, steps } from './plot/Curves.tsx'
import { long, type Spot } from './plot/Lines.tsx'
import { shown } from './plot/shown.ts'

type Here = { voltage: number; own: number | null; shared: number | null }
type Data = { all: Here[]; wanted: number; voltage: number; here: number | null }

function from(build: Build): Data {
  const { given, at } = asked(coilAtSpeed, build)
  const energy = (voltage: number, layout: string): number | null => at({ voltage, layout })?.['energy'] ?? null
  const inductance = given('inductance'), current = given('current')
  return {
    all: steps(8, 16, 16).map((voltage) => ({ voltage, own: energy(voltage, 'own'), shared: energy(voltage, 'shared') })),
    // Half the inductance times the current squared: what the coil holds when it is full.
    wanted: 0.5 * inductance * current ** 2, voltage: given('voltage'), here: at()?.['energy'] ?? null,
  }
}

export default figure<Data>({
  title: 'What a coil holds when it has to fire, over voltage',
  from,
  summary({ all, wanted, here, voltage }, system) {
    const e = shown(coilEnergy, system), u = shown(coilVoltage, system)
    const short = all.find(({ voltage: v, own }) => v <= voltage && own !== null && own > 0.98 * wanted)
    return `At the speed of most power. Wanted are ${e.say(wanted)}; at ${u.say(voltage)} the build’s coils hold ${here === null ? 'nothing that could be worked out' : e.say(here)}. ${short ? `A coil of its own is full down to ${u.say(short.voltage)}.` : 'Below that the coils are never full.'} The energy that is missing goes with the square of the current.`
  },
  Picture({ data: { all, wanted, voltage, here }, system }) {
    const e = shown(coilEnergy, system), u = shown(coilVoltage, system)
    const over = (of: 'own' | 'shared'): Spot[] => all.flatMap((x): Spot[] => (x[of] === null ? [] : [[u.of(x.voltage), e.of(x[of])]]))
    return <Curves says="Energy in a coil when its switch opens, over the voltage at the coil, for a coil of its own and a shared one." x={u.head()} y={e.head('Energy')} reach={[0]}
      lines={[{ name: 'Coil of its own', class: 'line', spots: over('own') }, { name: 'Shared coil', class: 'line two', dash: long, spots: over('shared') }]}
      levels={level('Wanted', 'line dash', [u.of(all[0]!.voltage), u.of(all.at(-1)!.voltage)], e.of(wanted))}
      marks={here === null ? [] : [{ at: [u.of(voltage), e.of(here)], says: 'this build', to: 'under' }]} />
  },
  table({ all }, system) {
    const e = shown(coilEnergy, system), u = shown(coilVoltage, system)
    const cell = (value: number | null): string => (value === null ? 'none' : writeNumber(e.of(value)))
    return { head: [u.head(), e.head('Of its own'), e.head('Shared')], rows: all.filter((_, i) => i % 2 === 0).map((x) => [writeNumber(u.of(x.voltage)), cell(x.own), cell(x.shared)]) }
  },
})
