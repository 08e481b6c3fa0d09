import { calculation, free } from '../calculation/calculation.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { role } from '../quantity/quantity.ts'
import { rpm } from '../quantity/si.ts'
import { doseByKind } from './doseByKind.ts'
import { doseOverReference } from './doseOverReference.ts'
import { density15, meteredIdle, referenceDose } from './fields.ts'
import { meteredDose } from './meteredDose.ts'
import { oilOverTurns } from './oilOverTurns.ts'
import { premixDose } from './premixDose.ts'
import { cutTime, oilMass, sealDose, sealDoseRatio, turnsOf } from './quantities.ts'
import { turnsInCut } from './turnsInCut.ts'

export default calculation({
  id: 'seal-oil-overrun', title: 'Oil for the seals in a fuel cut', theme: 'oil',
  asks: 'The throttle is shut and the fuel is cut at high speed: what do the seals get, in each of the three ways?',
  article: 'metered-premixed-or-both', cautions: ['fuel-additives-skin', 'emission-law', 'model-only'],
  in: { speed: free(shaftSpeed, rpm(6000), 'Shaft speed of the overrun'), time: free(cutTime, 4), atRest: meteredIdle, density15, reference: referenceDose },
  out: {
    turns: turnsOf, dose: role(sealDose, 'd_m', 'Dose by the metering pump'), times: sealDoseRatio, metered: role(oilMass, 'm_m', 'Oil by the metering pump'), premixed: role(oilMass, 'm_p', 'Oil by premix'),
    both: role(oilMass, 'm_b', 'Oil by both'), wanted: role(oilMass, 'm_r', 'Oil at the reference dose'),
  },
  curve: ['time', 'metered'],
  mayLack: ['times'],
  answer({ speed, time, atRest, density15, reference }) {
    const turns = turnsInCut({ speed, time })
    const dose = meteredDose({ delivery: atRest, density: density15 })
    const without = premixDose({ oil: 0, speed })
    return {
      turns, dose, times: doseOverReference({ dose, reference }), metered: oilOverTurns({ dose, turns }), premixed: oilOverTurns({ dose: without, turns }),
      both: oilOverTurns({ dose: doseByKind({ by: 'both', metered: dose, premixed: without }), turns }), wanted: oilOverTurns({ dose: reference, turns }),
    }
  },
  says: () => 'In {time} the shaft turns {turns} times. A metering pump with its lever at rest brings {metered}, {times} times the reference dose; premix brings {premixed}, both together {both}. The dose you chose would be {wanted}.',
  leavesOut: 'Oil that is left on the surfaces from before, which is what premix lives on here, and what the seals need: nobody has published that. Compare with the reference you chose; it proves nothing.',
})
