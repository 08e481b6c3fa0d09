import { calculation, free, NoAnswer, optional } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { litre } from '../quantity/si.ts'
import { dilutionSettled } from './dilutionSettled.ts'
import { driveRateOf } from './driveRateOf.ts'
import { density15, grade } from './fields.ts'
import { gradeLimits } from './gradeLimits.ts'
import { massOfOil } from './massOfOil.ts'
import { dilution, driveOff, fuelRate, runningTime, sumpOil, viscosityAt100, viscosityLoss } from './quantities.ts'
import { shearedAtLast } from './shearedAtLast.ts'
import { soonerOf } from './soonerOf.ts'
import { timeToDilution } from './timeToDilution.ts'
import { timeToViscosity } from './timeToViscosity.ts'

export default calculation({
  id: 'oil-change', title: 'When to change the oil', theme: 'oil',
  asks: 'After how many hours have fuel and shear brought the oil to a limit of mine?',
  article: 'dilution-sampling-and-change-intervals', cautions: ['waste-oil', 'hot-oil', 'model-only'],
  in: {
    grade, fresh: free(viscosityAt100, 14.2e-6, 'Fresh oil at 100 °C'), volume: free(sumpOil, litre(5)), density15, inflow: free(fuelRate, 8e-6), hourly: free(driveOff, 0.08), limit: free(dilution, 0.04, 'Dilution that is the limit'),
    lost: free(viscosityLoss, 0.12, 'Loss by shear that it settles at'), settling: free(runningTime, 54000, 'Hours to 63 % of that loss'), least: optional(free(viscosityAt100, 12.5e-6, 'Least viscosity at 100 °C')),
  },
  out: {
    byFuel: role(runningTime, 't_f', 'Hours to the dilution limit'), byViscosity: role(runningTime, 't_ν', 'Hours to the least viscosity'), interval: role(runningTime, 't_i', 'Hours to the sooner'),
    settles: role(dilution, 'x_e', 'Dilution it would settle at'), left: role(viscosityAt100, 'ν_e', 'Viscosity after shear alone'),
  },
  curve: ['inflow', 'interval'],
  mayLack: ['byFuel', 'byViscosity', 'interval'],
  answer({ grade, fresh, volume, density15, inflow, hourly, limit, lost, settling, least }) {
    const stays = least ?? gradeLimits({ grade }).least
    if (!(fresh > stays)) throw new NoAnswer('oil-change', 'The fresh oil is already at or below the least viscosity: it is not of the grade that is asked.')
    if (!(hourly > 0 && hourly < 1)) throw new NoAnswer('oil-change', 'Hot oil gives some of its fuel off, and not all of it in an hour: enter a share between nothing and one.')
    const mass = massOfOil({ volume, density: density15 })
    const driven = driveRateOf({ hourly })
    const byFuel = timeToDilution({ inflow, mass, driven, limit })
    const byViscosity = timeToViscosity({ fresh, limit: stays, lost, settling, inflow, mass, driven })
    return { byFuel, byViscosity, interval: soonerOf({ one: byFuel, other: byViscosity }), settles: dilutionSettled({ inflow, mass, driven }), left: shearedAtLast({ fresh, lost }) }
  },
  says: ({ byFuel, byViscosity, interval }) => Number.isNaN(interval)
    ? 'Neither limit is ever met: dilution settles at {settles} and shear leaves {left}. Change by time, acid and dirt instead, and sample.'
    : `Change after {interval}: ${Number.isNaN(byFuel) || byViscosity < byFuel ? 'by then shear and fuel have taken the viscosity to the limit' : 'by then fuel has come to {limit}'}. Left alone, dilution would settle at {settles} and shear at {left}. A sample half way tells whether these rates are yours.`,
  leavesOut: 'Acid, soot, water, metal and oxidation, which only a sample tells. All rates here are guesses until two samples replace them.',
})
