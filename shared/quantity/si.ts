/** Writers of SI numbers for declarations: `mm(15)` reads better than `0.015` and slips less. Marked pure: what nobody uses is dropped whole. */
export const mm = /* @__NO_SIDE_EFFECTS__ */ (x: number) => x * 1e-3
export const um = /* @__NO_SIDE_EFFECTS__ */ (x: number) => x * 1e-6
export const cm2 = /* @__NO_SIDE_EFFECTS__ */ (x: number) => x * 1e-4
export const cm3 = /* @__NO_SIDE_EFFECTS__ */ (x: number) => x * 1e-6
export const litre = /* @__NO_SIDE_EFFECTS__ */ (x: number) => x * 1e-3
export const ms = /* @__NO_SIDE_EFFECTS__ */ (x: number) => x * 1e-3
export const minutes = /* @__NO_SIDE_EFFECTS__ */ (x: number) => x * 60
export const bar = /* @__NO_SIDE_EFFECTS__ */ (x: number) => x * 1e5
export const kPa = /* @__NO_SIDE_EFFECTS__ */ (x: number) => x * 1e3
export const MPa = /* @__NO_SIDE_EFFECTS__ */ (x: number) => x * 1e6
export const degC = /* @__NO_SIDE_EFFECTS__ */ (x: number) => x + 273.15
export const rpm = /* @__NO_SIDE_EFFECTS__ */ (x: number) => (x * Math.PI) / 30
export const deg = /* @__NO_SIDE_EFFECTS__ */ (x: number) => (x * Math.PI) / 180
export const ccPerMin = /* @__NO_SIDE_EFFECTS__ */ (x: number) => (x * 1e-6) / 60
export const lPerH = /* @__NO_SIDE_EFFECTS__ */ (x: number) => (x * 1e-3) / 3600
export const lPerMin = /* @__NO_SIDE_EFFECTS__ */ (x: number) => (x * 1e-3) / 60
export const kW = /* @__NO_SIDE_EFFECTS__ */ (x: number) => x * 1e3
export const percent = /* @__NO_SIDE_EFFECTS__ */ (x: number) => x / 100
export const kmh = /* @__NO_SIDE_EFFECTS__ */ (x: number) => x / 3.6
export const gPerKWh = /* @__NO_SIDE_EFFECTS__ */ (x: number) => (x * 1e-3) / 3.6e6
