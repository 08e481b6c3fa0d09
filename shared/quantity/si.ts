/** Writers of SI numbers for declarations: `mm(15)` reads better than `0.015` and slips less. */
export const mm = (x: number) => x * 1e-3
export const um = (x: number) => x * 1e-6
export const cm2 = (x: number) => x * 1e-4
export const cm3 = (x: number) => x * 1e-6
export const litre = (x: number) => x * 1e-3
export const ms = (x: number) => x * 1e-3
export const minutes = (x: number) => x * 60
export const bar = (x: number) => x * 1e5
export const kPa = (x: number) => x * 1e3
export const MPa = (x: number) => x * 1e6
export const degC = (x: number) => x + 273.15
export const rpm = (x: number) => (x * Math.PI) / 30
export const deg = (x: number) => (x * Math.PI) / 180
export const ccPerMin = (x: number) => (x * 1e-6) / 60
export const lPerH = (x: number) => (x * 1e-3) / 3600
export const lPerMin = (x: number) => (x * 1e-3) / 60
export const kW = (x: number) => x * 1e3
export const percent = (x: number) => x / 100
export const kmh = (x: number) => x / 3.6
export const gPerKWh = (x: number) => (x * 1e-3) / 3.6e6
