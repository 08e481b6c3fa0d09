import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation, Values } from '@trochoid/compute/calculation/calculation.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { bearingLoad, diametralClearance, filmThickness, radialClearance } from '@trochoid/compute/oil/quantities.ts'
import { radialFromDiametral } from '@trochoid/compute/oil/radialFromDiametral.ts'
import rotorBearingGas from '@trochoid/compute/oil/rotorBearingGas.calc.ts'
import rotorBearingInertia from '@trochoid/compute/oil/rotorBearingInertia.calc.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { round, Sheet } from './plot/Sheet.tsx'
import { shown } from './plot/shown.ts'

type Case = { says: string; load: number; film: number; turns: string }
type Data = { speed: number; diametral: number; radial: number; wanted: number; cases: Case[] } | null

function from({ sheet, point }: Build): Data {
  const inertia: AnyCalculation = rotorBearingInertia
  const gas: AnyCalculation = rotorBearingGas
  if (point['engine.power'] === undefined || point['oil.temperature'] === undefined) return null
  const given: Values = valuesFor(inertia, sheet, point)
  const diametral = given['diametral'] as number
  try {
    const held = inertia.answer(given), pushed = gas.answer(valuesFor(gas, sheet, point))
    return {
      speed: given['speed'] as number, diametral, radial: radialFromDiametral({ diametral }), wanted: held['wanted']!,
      cases: [
        { says: 'Inertia', load: held['load']!, film: held['film']!, turns: 'load turns with the shaft' },
        { says: 'Gas peak, steady estimate', load: pushed['left']!, film: pushed['film']!, turns: 'load stands still' },
      ],
    }
  } catch { return null }
}

/** Radius of the shell and widest gap as drawn: the gap is hundreds of times too wide, journal and film keep their share of it. */
const shell = 120, gap = 34
const floor = 262, middle = [160, 480] as const

export default figure<Data>({
  title: 'Journal, clearance and film, the gap drawn far too wide',
  from,
  summary(data, system) {
    if (!data) return 'The films of this build could not be worked out, so nothing is drawn.'
    const c = shown(radialClearance, system), h = shown(filmThickness, system)
    const told = data.cases.map((x) => `${x.says}: ${shown(bearingLoad, system).say(x.load)} leaves a film of ${h.say(x.film)} where it is thinnest`).join('. ')
    return `Rotor bearing at ${shown(shaftSpeed, system).say(data.speed)}; a diametral clearance of ${shown(diametralClearance, system).say(data.diametral)} is ${c.say(data.radial)} all round when centred. ${told}. ${h.say(data.wanted)} is wanted to clear the roughness of both surfaces. The place of the thinnest film is drawn straight below the load; in truth it lies some way round.`
  },
  Picture({ data, system }) {
    if (!data) return null
    const h = shown(filmThickness, system)
    return (
      <Sheet says="Two bearings in section with the journal pressed down in an exaggerated gap, film thinnest below." height={330}>
        {data.cases.map((x, i) => {
          const cx = middle[i]!, cy = floor - shell
          const film = Math.min(1, x.film / data.radial)
          const journal = shell - gap
          // Gap below is the film's share of the clearance, gap above the rest of twice the clearance.
          const down = cy + gap * (1 - film)
          return (
            <g key={x.says}>
              <circle class="area" cx={cx} cy={cy} r={shell} />
              <circle class="line" cx={cx} cy={cy} r={shell} />
              <circle fill="var(--paper)" class="line" cx={cx} cy={round(down)} r={journal} />
              <path class="line two" d={`M${cx} ${round(down - 40)}v52m-8 -12l8 14l8 -14`} />
              <path class="line two" d={`M${cx} ${floor + 1}v16m-30 0h60`} />
              <text class="strong" x={cx} y="16" text-anchor="middle">{x.says.split(',')[0]}</text>
              <text x={cx} y={round(down - 50)} text-anchor="middle">{shown(bearingLoad, system).say(x.load)}</text>
              <text class="strong" x={cx} y={floor + 40} text-anchor="middle">film {h.say(x.film)}</text>
              <text x={cx} y={floor + 64} text-anchor="middle">{x.turns}</text>
            </g>
          )
        })}
      </Sheet>
    )
  },
  table(data, system) {
    const h = shown(filmThickness, system), w = shown(bearingLoad, system), c = shown(radialClearance, system)
    return {
      head: ['Case', w.head(), c.head(), h.head(), h.head('Widest gap')],
      rows: (data?.cases ?? []).map((x) => [x.says, writeNumber(w.of(x.load)), writeNumber(c.of(data!.radial)), writeNumber(h.of(x.film)), writeNumber(h.of(2 * data!.radial - x.film))]),
    }
  },
})
