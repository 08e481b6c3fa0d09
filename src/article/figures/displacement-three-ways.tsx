import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import conventions from '@trochoid/compute/engine/displacementConventions.calc.ts'
import { quotedDisplacement } from '@trochoid/compute/engine/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { Bars } from './plot/Bars.tsx'
import { shown } from './plot/shown.ts'

type Data = { chamber: number; oneTurn: number; twoTurns: number; threeTurns: number; rotors: number }
const ways = [
  { of: 'oneTurn', name: 'One chamber per rotor', turns: 1, used: 'the makers’ figure; air, fuel and injectors per turn' },
  { of: 'twoTurns', name: 'What two turns take in', turns: 2, used: 'comparison with a four-stroke piston engine' },
  { of: 'threeTurns', name: 'All chambers, once each', turns: 3, used: 'geometry' },
] as const

function from({ sheet, point }: Build): Data {
  const of: AnyCalculation = conventions, given = valuesFor(of, sheet, point), x = of.answer(given)
  return { chamber: x['chamber']!, oneTurn: x['oneTurn']!, twoTurns: x['twoTurns']!, threeTurns: x['threeTurns']!, rotors: given['rotors'] as number }
}

export default figure<Data>({
  title: 'One engine, three displacements',
  from,
  summary(data, system) {
    const v = shown(quotedDisplacement, system)
    return `The same ${data.rotors === 2 ? 'two rotors' : `${data.rotors} rotors`}, each with chambers of ${v.say(data.chamber)}. In one turn of the shaft they take in ${v.say(data.oneTurn)}, in two ${v.say(data.twoTurns)}, and in three every chamber has taken in its charge: ${v.say(data.threeTurns)}. Flow for each minute is the same in all three.`
  },
  Picture({ data, system }) {
    const v = shown(quotedDisplacement, system)
    return <Bars says="Three figures for the displacement of one engine." rows={ways.map(({ of, name, turns }) => ({ name, says: v.say(data[of]), parts: Array.from({ length: turns }, (_, i) => ({ of: v.of(data[of]) / turns, class: i % 2 === 0 ? 'fill-accent' : 'fill' })) }))} />
  },
  table(data, system) {
    const v = shown(quotedDisplacement, system)
    return { head: ['Convention', 'Turns of the shaft', v.head(), 'Used for'], rows: ways.map(({ of, name, turns, used }) => [name, String(turns), writeNumber(v.of(data[of])), used]) }
  },
})
