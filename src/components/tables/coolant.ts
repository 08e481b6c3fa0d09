import { coolantBoilingPoint } from '@trochoid/compute/cooling/coolantBoilingPoint.ts'
import { coolantConductivity } from '@trochoid/compute/cooling/coolantConductivity.ts'
import { coolantDensity } from '@trochoid/compute/cooling/coolantDensity.ts'
import { coolantSpecificHeat } from '@trochoid/compute/cooling/coolantSpecificHeat.ts'
import { coolantViscosity } from '@trochoid/compute/cooling/coolantViscosity.ts'
import { freezingPoint } from '@trochoid/compute/cooling/freezingPoint.ts'
import { figure, type ReferenceTable } from './table.ts'

const shares = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6]
const atmosphere = 101_325
const hot = 363.15

export const coolant: ReferenceTable = {
  id: 'coolant', title: 'Coolant', also: 'antifreeze glycol water 50/50 mixture freezing boiling point cap pressure',
  says: 'Where water with glycol freezes and boils, and how well it carries heat at 90 °C.',
  parts: [
    {
      id: 'mixtures', title: 'Ethylene glycol in water',
      head: ['Glycol by volume, %', 'Freezes, °C', 'Density at 90 °C, kg/m³', 'Specific heat at 90 °C, kJ/(kg K)', 'Conductivity at 90 °C, W/(m K)', 'Viscosity at 90 °C, mPa s'],
      rows: shares.map((glycol) => [figure(glycol * 100), glycol <= 0.578 ? figure(freezingPoint({ glycol }) - 273.15, 1) : 'below −48',
        figure(coolantDensity({ glycol, temperature: hot })), figure(coolantSpecificHeat({ glycol, temperature: hot }) / 1000, 2), figure(coolantConductivity({ glycol, temperature: hot }), 3), figure(coolantViscosity({ glycol, temperature: hot }) * 1000, 2)]),
    },
    {
      id: 'boiling', title: 'Boiling point under a cap, at sea level, °C',
      head: ['Glycol by volume, %', 'open', 'cap 0.5 bar', 'cap 0.9 bar', 'cap 1.1 bar', 'cap 1.3 bar'],
      rows: shares.map((glycol) => [figure(glycol * 100), ...[0, 0.5, 0.9, 1.1, 1.3].map((cap) => figure(coolantBoilingPoint({ glycol, pressure: atmosphere + cap * 1e5 }) - 273.15, 1))]),
    },
  ],
  notes: ['Bulk of the coolant only: hot spots in the housings boil sooner.', 'Boiling by Raoult’s law agrees with printed values at atmospheric pressure to about 1 K.', 'A cap lifts the boiling point; it carries off no heat.'],
  sources: ['ashrae-2001', 'iapws-if97', 'raoult'], cautions: ['hot-pressurised-coolant'], calculators: ['coolant-mixture', 'boil-margin'],
}
