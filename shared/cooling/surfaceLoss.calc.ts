import { calculation, free } from '../calculation/calculation.ts'
import { siteAirTemperature } from '../engine/fields.ts'
import { degC } from '../quantity/si.ts'
import { role } from '../quantity/quantity.ts'
import { convectedHeat } from './convectedHeat.ts'
import { heatSum } from './heatSum.ts'
import { emissivityOf, heatFlow, surfaceArea, surfaceFilm, surfaceTemperatureOf } from './quantities.ts'
import { radiatedHeat } from './radiatedHeat.ts'

/** What a hot surface gives to the engine bay. */
export default calculation({
  id: 'surface-loss',
  title: 'Heat from a hot surface',
  theme: 'cooling',
  asks: 'How much heat does a bare or wrapped hot part give to the engine bay?',
  article: 'heat-breaks-and-spacers',
  cautions: ['hot-metal', 'exhaust-gas', 'model-only'],
  in: {
    surface: free(surfaceTemperatureOf, degC(650)), area: free(surfaceArea, 0.15), emissivity: free(emissivityOf, 0.8), film: free(surfaceFilm, 25), around: siteAirTemperature,
  },
  out: { radiated: role(heatFlow, 'Q_r', 'Heat radiated'), convected: role(heatFlow, 'Q_k', 'Heat convected'), heat: heatFlow },
  curve: ['surface', 'heat'],
  answer({ surface, area, emissivity, film, around }) {
    const radiated = radiatedHeat({ surface, around, area, emissivity })
    const convected = convectedHeat({ surface, around, area, film })
    return { radiated, convected, heat: heatSum({ one: radiated, other: convected }) }
  },
  says: ({ radiated, convected }) => radiated > convected
    ? '{heat}, most of it radiated: a bright shield between the part and what must stay cool does more than a draught.'
    : '{heat}, most of it carried off by air: a shield alone does little, a draught or a wrap does more.',
  leavesOut: 'surroundings that are themselves hot and radiate back',
})
