import { expect, test } from 'vitest'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import { type AnyCalculation, type Values } from '@trochoid/compute/calculation/calculation.ts'
import coolantCircuit from '@trochoid/compute/cooling/coolantCircuit.calc.ts'
import louvredCore from '@trochoid/compute/cooling/louvredCore.calc.ts'
import pumpDrive from '@trochoid/compute/cooling/pumpDrive.calc.ts'
import thermostatFlow from '@trochoid/compute/cooling/thermostatFlow.calc.ts'
import { finEfficiency } from '@trochoid/compute/cooling/finEfficiency.ts'

const ask = (of: AnyCalculation, given: Values = {}): Record<string, number> => ({ ...of.answer({ ...startValues(of), ...given }) })

test('a core of usual size carries what such radiators are rated for, most of its resistance on the air’s side', () => {
  const here = ask(louvredCore, { glycol: 0.5 })
  expect(here['heat']).toBeGreaterThan(50e3)
  expect(here['heat']).toBeLessThan(110e3)
  expect(here['share']).toBeGreaterThan(0.5)
  expect(here['efficiency']).toBeGreaterThan(0.8)
  expect(ask(louvredCore, { glycol: 0.5, height: 0.7 })['heat']).toBeGreaterThan(here['heat']!)
  expect(ask(louvredCore, { glycol: 0.5, finPitch: 0.0025 })['conductance']).toBeLessThan(here['conductance']!)
  expect(ask(louvredCore, { glycol: 0.5, air: 2.4 })['heat']).toBeGreaterThan(here['heat']!)
})
test('a short or well conducting fin is as warm as its root', () => {
  expect(finEfficiency({ film: 1e-6, conductivity: 200, fin: 1e-4, tubePitch: 0.01, tube: 0.002 })).toBeCloseTo(1, 8)
  expect(finEfficiency({ film: 150, conductivity: 20, fin: 1e-4, tubePitch: 0.01, tube: 0.002 })).toBeLessThan(finEfficiency({ film: 150, conductivity: 200, fin: 1e-4, tubePitch: 0.01, tube: 0.002 }))
})
test('at the flow of the circuit, what the pump still adds is what the circuit takes', () => {
  const x = { speed: 500, ratedSpeed: 628, shutOff: 140e3, freeFlow: 0.005, drop: 80e3, dropFlow: 0.003 }
  const { flow, rise } = ask(coolantCircuit, x)
  const at = (x.speed / x.ratedSpeed) ** 2
  expect(x.shutOff * at - x.shutOff * (flow! / x.freeFlow) ** 2).toBeCloseTo(rise!, 4)
  expect(ask(coolantCircuit, { ...x, speed: 250 })['flow']).toBeCloseTo(flow! / 2, 12)
})
test('a thermostat shut, half open and open shares the whole flow', () => {
  for (const [temperature, opening] of [[350, 0], [361.65, 0.5], [380, 1]] as const) {
    const { opening: is, radiator, bypass } = ask(thermostatFlow, { temperature, opens: 355.15, open: 368.15, speed: 600, rated: 0.003, ratedSpeed: 600 })
    expect(is).toBeCloseTo(opening, 6)
    expect(radiator! + bypass!).toBeCloseTo(0.003, 12)
  }
})
test('a faster pump needs more above boiling; hotter coolant and less cap leave less', () => {
  const x = { speed: 700, driving: 0.11, driven: 0.13, rated: 0.003, ratedSpeed: 628, temperature: 363, glycol: 0.5, outside: 101325, cap: 1.1e5, loss: 15e3, number: 3 }
  const here = ask(pumpDrive, x)
  expect(here['pump']).toBeCloseTo((700 * 11) / 13, 9)
  expect(ask(pumpDrive, { ...x, driving: 0.13 })['needed']).toBeGreaterThan(here['needed']!)
  expect(ask(pumpDrive, { ...x, temperature: 373 })['above']).toBeLessThan(here['above']!)
  expect(ask(pumpDrive, { ...x, cap: 0 })['above']).toBeCloseTo(here['above']! - 1.1e5, 6)
})
