import { expect, test } from 'vitest'
import { run, type AnyCalculation, type Values } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import fuelPump from '@trochoid/compute/fuel/fuelPump.calc.ts'
import hoseBore from '@trochoid/compute/fuel/hoseBore.calc.ts'
import idlePulse from '@trochoid/compute/fuel/idlePulse.calc.ts'
import injectorDuty from '@trochoid/compute/fuel/injectorDuty.calc.ts'
import injectorSizing from '@trochoid/compute/fuel/injectorSizing.calc.ts'
import lineLoss from '@trochoid/compute/fuel/lineLoss.calc.ts'
import premixDose from '@trochoid/compute/fuel/premixDose.calc.ts'
import railPressure from '@trochoid/compute/fuel/railPressure.calc.ts'
import regulatorBypass from '@trochoid/compute/fuel/regulatorBypass.calc.ts'
import sessionFuel from '@trochoid/compute/fuel/sessionFuel.calc.ts'
import tipIn from '@trochoid/compute/fuel/tipIn.calc.ts'
import twoStagePlan from '@trochoid/compute/fuel/twoStagePlan.calc.ts'
import vapourMargin from '@trochoid/compute/fuel/vapourMargin.calc.ts'

const full = { fuel: 150e-6, speed: 700, manifold: 2e5, lambda: 0.8, density: 725, drop: 3.5e5, lastDrop: 3.5e5 }
const back = { pumped: 9e-5, used: 1e-6, manifold: 45e3, outside: 1e5, density: 725 }

/** Each sentence that can be said, by numbers that lead to it. */
const said: readonly (readonly [AnyCalculation, Values, RegExp])[] = [
  [twoStagePlan, full, /^Primaries are open .* is left for closing\. .* above the/],
  [twoStagePlan, { ...full, manifold: 8e4 }, /^The primaries alone .* secondaries rest/],
  [twoStagePlan, { ...full, fuel: 400e-6 }, /more than a whole turn/],
  [twoStagePlan, { ...full, secondarySmallest: 5e-3, secondaryFlow: 6e-5 }, /less than they repeat/],
  [twoStagePlan, { ...full, secondaries: 0 }, /no secondaries to hand over to/],
  [injectorDuty, { ...full, fuel: 30e-6 }, /One shaft turn is all there is/],
  [injectorDuty, { ...full, fuel: 300e-6 }, /cannot feed it/],
  [idlePulse, { density: 725 }, /longer than the shortest/],
  [idlePulse, { density: 725, smallest: 4e-3 }, /idle will hunt/],
  [injectorSizing, { ...full, fuel: 200e-6 }, /asks for two stages/],
  [injectorSizing, { ...full, fuel: 20e-6 }, /one stage could do both/],
  [fuelPump, { used: 5e-5, manifold: 2e5, density: 725 }, /for the \{used\} the engine burns/],
  [fuelPump, { used: 2e-4, manifold: 2e5, density: 725 }, /the rail will fall/],
  [lineLoss, { ...back, place: 'after' }, /costs pump flow/],
  [lineLoss, { ...back, place: 'before' }, /missing at the last nozzle/],
  [railPressure, { reference: 'manifold' }, /rises one for one/],
  [railPressure, { reference: 'atmosphere' }, /whatever the manifold does/],
  [regulatorBypass, { ...back, fullFlow: 1.4e-4 }, /would pass/],
  [regulatorBypass, { ...back, fullFlow: 3e-5 }, /the rail will rise/],
  [hoseBore, { flow: 9e-5, density: 725, dash: 4 }, /so it runs at/],
  [hoseBore, { flow: 9e-5, density: 725, dash: 8 }, /has \{hose\}, runs at/],
  [vapourMargin, { held: 2.5e5 }, /which leaves/],
  [vapourMargin, { held: 2e4 }, /the restart is lean/],
  [sessionFuel, { fullFlow: 5e-5 }, /would last/],
  [sessionFuel, { fullFlow: 2e-4 }, /it ends after/],
  [premixDose, { density: 725 }, /less than a sensor tells apart/],
  [premixDose, { density: 725, wanted: 0.05 }, /has to make up for/],
  [premixDose, { density: 725, presentShare: 0.04, present: 0.05 }, /pour none/],
  [tipIn, { air: 0.05, manifold: 2e5, temperature: 320, speed: 600 }, /go by without it/],
  [tipIn, { air: 0.8, manifold: 1e5, temperature: 320, speed: 300 }, /within one charge/],
]
test.each(said.map(([of, values, says]) => [of.id, of, values, says] as const))('%s says what its numbers mean: %#', (_, of, values, says) => {
  expect(run(of, { ...startValues(of), ...values }).says).toMatch(says)
})
