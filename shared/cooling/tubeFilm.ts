import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { petukhovFriction } from './petukhovFriction.ts'
import { coolantConductivityOf, coolantHeatCapacity, coolantViscosityOf, coreFilm, tubeReynolds, tubeThickness } from './quantities.ts'

/** Heat transfer in the tubes of a core. */
export const about = {
  name: 'Heat transfer in a tube',
  in: { reynolds: tubeReynolds, viscosity: coolantViscosityOf, specificHeat: coolantHeatCapacity, conductivity: coolantConductivityOf, diameter: role(tubeThickness, 'd_t', 'Hydraulic diameter of a tube') },
  out: role(coreFilm, 'h_c', 'Heat transfer on the coolant’s side'),
  steps: [
    'Prandtl number: viscosity times specific heat over conductivity.',
    'From Re 3,000 on: Nu = (f/8)(Re − 1000) Pr / (1 + 12.7 √(f/8) (Pr^(2/3) − 1)), f by Petukhov.',
    'Up to Re 2,300: Nu = 7.54, laminar between parallel plates at one wall temperature.',
    'Between the two a straight line over Re.',
    'Nu times conductivity over the hydraulic diameter.',
  ],
  source: ['gnielinski-1976', 'as in Incropera, equation 8.62; laminar from table 8.1'],
  notes: 'Dimples and turbulators raise it; entrance lengths are left out, which is on the safe side.',
} as const satisfies About

const laminar = 7.54, lastLaminar = 2300, firstTurbulent = 3000

export const tubeFilm = formula<typeof about>('tube-film', { reynolds: [0, 5e6] }, ({ reynolds, viscosity, specificHeat, conductivity, diameter }) => {
  const prandtl = (viscosity * specificHeat) / conductivity
  const turbulent = (re: number): number => { const f = petukhovFriction({ reynolds: re }) / 8; return (f * (re - 1000) * prandtl) / (1 + 12.7 * Math.sqrt(f) * (prandtl ** (2 / 3) - 1)) }
  const nusselt = reynolds <= lastLaminar ? laminar : reynolds >= firstTurbulent ? turbulent(reynolds) : laminar + ((turbulent(firstTurbulent) - laminar) * (reynolds - lastLaminar)) / (firstTurbulent - lastLaminar)
  return (nusselt * conductivity) / diameter
})
