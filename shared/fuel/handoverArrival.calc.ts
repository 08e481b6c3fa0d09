import { calculation, free } from '../calculation/calculation.ts'
import { ductLength, lambda, shaftSpeed } from '../engine/quantities.ts'
import { role } from '../quantity/quantity.ts'
import { mm, rpm } from '../quantity/si.ts'
import { arrivalDelayOf } from './arrivalDelayOf.ts'
import { arrivalOver } from './arrivalOver.ts'
import { handoverLambda } from './fields.ts'
import { lambdaOfFuelChange } from './lambdaOfFuelChange.ts'
import { airSpeedInDuct, arrivalDelay, fuelChange, stageShare, turnsLate, wallShare, wallTime } from './quantities.ts'
import { turnsLateOf } from './turnsLateOf.ts'
import { turnTimeOf } from './turnTimeOf.ts'

export default calculation({
  id: 'hand-over-arrival',
  title: 'Hand-over as it arrives',
  theme: 'fuel',
  asks: 'Fuel is injected without a step at hand-over: how lean does it arrive, and how long must the primaries hold on?',
  article: 'two-stages-idle-tip-in-hand-over',
  cautions: ['knock', 'fuel-vapour', 'model-only'],
  in: {
    part: free(stageShare, 0.35, 'Part that the secondaries take over'), lambda: handoverLambda, speed: free(shaftSpeed, rpm(3500), 'Shaft speed of the hand-over'), airSpeed: free(airSpeedInDuct, 25, 'Speed of the air in the duct'),
    distance: free(ductLength, mm(350), 'Way from secondary to port'), wall: free(wallShare, 0.25, 'Share of the primaries that wets the wall'), settling: free(wallTime, 0.25, 'Settling time of that film'),
    farWall: free(wallShare, 0.5, 'Share of the secondaries that wets the wall'), farSettling: free(wallTime, 0.6, 'Settling time of the secondaries’ film'), fed: free(stageShare, 1, 'Part of the wall’s demand that the controller makes up for'),
  },
  out: {
    delay: arrivalDelay, held: role(turnsLate, 'N_h', 'Charges that the primaries hold on'), plain: role(fuelChange, 'δ_1', 'Leanest charge, nothing done'), heldOnly: role(fuelChange, 'δ_2', 'Leanest charge, primaries held on'),
    fedToo: role(fuelChange, 'δ_3', 'Leanest charge, walls fed too'), rich: role(fuelChange, 'δ_4', 'Richest charge, walls fed too'), lean: role(lambda, 'λ_1', 'Lambda of the leanest, nothing done'), mended: role(lambda, 'λ_3', 'Lambda of the leanest, walls fed too'),
  },
  curve: ['part', 'plain'],
  answer({ part, lambda, speed, airSpeed, distance, wall, settling, farWall, farSettling, fed }) {
    const turn = turnTimeOf({ speed })
    const delay = arrivalDelayOf({ distance, speed: airSpeed })
    const late = turnsLateOf({ delay, turn })
    const way = { part, late, turn, wall, settling, farWall, farSettling }
    const plain = arrivalOver({ ...way, held: 0, fed: 0 }).least
    const heldOnly = arrivalOver({ ...way, held: late, fed: 0 }).least
    const { least: fedToo, most: rich } = arrivalOver({ ...way, held: late, fed })
    return { delay, held: late, plain, heldOnly, fedToo, rich, lean: lambdaOfFuelChange({ lambda, change: plain }), mended: lambdaOfFuelChange({ lambda, change: fedToo }) }
  },
  says: ({ fedToo }) => `Stepping at once leaves the leanest charge {plain} off what was meant, lambda {lean} instead of {lambda}: secondary fuel is {delay} on its way. If the primaries hold on for {held} charges, {heldOnly} are left, which the walls take; made up for, {fedToo}${fedToo > -0.005 ? ': the mixture arrives without a step within half a per cent, in this model' : ''}.`,
  leavesOut: 'A controller that counts whole charges, films that differ from the ones assumed, and throttle movement during the hand-over. A log of lambda through a slow hand-over settles it.',
})
