import { formula, inputsBut, type About } from '../formula/formula.ts'
import { untraced } from '../formula/trace.ts'
import { manifoldPressure } from '../engine/quantities.ts'
import { bracketedRoot } from '../numerics/root.ts'
import { role } from '../quantity/quantity.ts'
import { actualSpeed } from './actualSpeed.ts'
import { compressorAt } from './compressorAt.ts'
import { correctedFlow } from './correctedFlow.ts'
import { flowOfOne } from './flowOfOne.ts'
import { pressureAfterLoss } from './pressureAfterLoss.ts'
import { flowPressureLoss } from './flowPressureLoss.ts'
import { gasDensity } from '../engine/gasDensity.ts'
import { compressorMap, gasPressure, turboCount, turboPower, turboSpeed } from './quantities.ts'
import { about as balance, turboBalanceAt } from './turboBalanceAt.ts'

/** Boost that turning turbochargers hold in an engine at a shaft speed, and what drives and brakes them. */
export const about = {
  name: 'Boost at a turbocharger speed',
  in: inputsBut(balance, ['manifold', 'compressorEfficiency'], { map: compressorMap, turbos: turboCount, turboSpeed }),
  out: { manifold: manifoldPressure, asked: role(turboPower, 'P_c', 'Compressor power'), given: role(turboPower, 'P_g', 'Power the shaft brings to the compressor'), before: role(gasPressure, 'p_3', 'Pressure before the turbine') },
  steps: [
    'Find the manifold pressure at which the map, at the flow and ratio that go with it, has the turbocharger’s speed: between outside pressure and five times that.',
    'A wheel so slow that the engine would turn it faster at no boost at all neither helps nor hinders: the manifold is at the pressure outside.',
    'Efficiency is the map’s at that place.',
  ],
  source: ['derived', 'flow through the engine and flow through the compressor are one'],
  notes: 'The volumes of pipes and cooler fill at once: they take some hundredths of a second.',
} as const satisfies About

export const boostAtTurboSpeed = formula<typeof about>('boost-at-turbo-speed', {}, ({ map, turbos, turboSpeed: wheel, ...x }) => {
  const { outside, temperature } = x
  const { referenceTemperature, referencePressure } = map
  const at = (manifold: number, compressorEfficiency: number) => {
    const engine = turboBalanceAt({ ...x, manifold, compressorEfficiency })
    const pressure = pressureAfterLoss({ before: outside, loss: flowPressureLoss({ coefficient: x.inletLoss, flow: engine.air, density: gasDensity({ pressure: outside, temperature }) }) })
    return { engine, place: compressorAt({ map, flow: correctedFlow({ flow: flowOfOne({ flow: engine.air, turbos }), temperature, pressure, referenceTemperature, referencePressure }), ratio: engine.ratio }) }
  }
  const over = (manifold: number): number => actualSpeed({ corrected: at(manifold, 0.7).place.speed, temperature, referenceTemperature }) / wheel - 1
  return untraced(() => {
    const idle = over(outside)
    if (!(idle < 0)) { const { engine } = at(outside, 0.7); return { manifold: outside, asked: 0, given: engine.given, before: engine.before } }
    const manifold = bracketedRoot(over, outside, outside * 5, outside * 1e-6, idle).x
    const { engine } = at(manifold, at(manifold, 0.7).place.efficiency)
    return { manifold, asked: engine.asked, given: engine.given, before: engine.before }
  })
})
