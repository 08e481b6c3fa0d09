import { field } from '../build/field.ts'
import { degC, ms, percent, rpm } from '../quantity/si.ts'
import {
  alternatorCurve, alternatorTemperature, burnTime, coilCount, coilCurrent, coilInductance, coilLayout, coilResistance, coilVoltage, driverDrop, loadCurrent, outputShare,
  primaryCount, pulleyRatio,
} from './quantities.ts'

export const inductance = field('spark.coil.inductance', coilInductance, 4e-3)
export const resistance = field('spark.coil.resistance', coilResistance, 0.6)
export const wantedCurrent = field('spark.coil.current', coilCurrent, 7.5, { label: 'Current wanted in a coil' })
export const voltage = field('electric.voltage', coilVoltage, 13.8, { label: 'System voltage while running' })
export const driver = field('spark.driverDrop', driverDrop, 1)
export const burn = field('spark.burnTime', burnTime, ms(1))
export const layout = field('spark.layout', coilLayout, 'own')
export const coils = field('spark.coils', coilCount, 4)

export const alternator = field('electric.alternator.curve', alternatorCurve, {
  x: [rpm(1500), rpm(1800), rpm(2000), rpm(3000), rpm(4000), rpm(6000), rpm(12000)],
  y: [36, 52, 60, 82, 92, 100, 104],
})
export const pulley = field('electric.alternator.pulleyRatio', pulleyRatio, 2.2)
export const ratedAir = field('electric.alternator.ratedAir', alternatorTemperature, degC(23), { label: 'Air in the rating test' })
export const hotAir = field('electric.alternator.hotAir', alternatorTemperature, degC(90), { label: 'Air at the hot share' })
export const hotShare = field('electric.alternator.hotShare', outputShare, percent(83), { label: 'Share of the output left hot' })
export const idleAir = field('electric.alternator.air', alternatorTemperature, degC(90))

export const pumps = field('electric.load.pumps', loadCurrent, 10, { label: 'Current of the fuel pumps' })
export const fans = field('electric.load.fans', loadCurrent, 14, { label: 'Current of the fans' })
export const controller = field('electric.load.controller', loadCurrent, 4, { label: 'Current of controller and sensors' })
export const lights = field('electric.load.lights', loadCurrent, 8, { label: 'Current of the lights' })
export const cabin = field('electric.load.cabin', loadCurrent, 4, { label: 'Current of the cabin' })
export const injectorCurrent = field('electric.load.injector', loadCurrent, 1, { label: 'Current of an open injector' })
export const injectors = field('electric.injectors', primaryCount, 2)
