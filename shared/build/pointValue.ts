import { type Kind } from '../quantity/kinds.ts'
import { type Quantity } from '../quantity/quantity.ts'

/** One value of the solved point: the coupled model at one shaft speed. */
export type PointValue<K extends Kind = Kind> = { readonly origin: 'point'; readonly path: string; readonly shape: Quantity<K>; readonly label?: string }

/** Declares a value of the solved point by path, `fuel.primaryPulse`. */
export const pointValue = /* @__NO_SIDE_EFFECTS__ */ <K extends Kind>(path: string, shape: Quantity<K>, label?: string): PointValue<K> =>
  label === undefined ? { origin: 'point', path, shape } : { origin: 'point', path, shape, label }
