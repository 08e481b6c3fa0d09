import { type Check } from '../check.ts'

const relations = 'Kays and London, Compact Heat Exchangers; Incropera, table 11.3; computed with ht 1.0.7 and scipy 1.10.1'
const incropera = 'Incropera, DeWitt, Bergman, Lavine, Fundamentals of Heat and Mass Transfer, 6th edition (2007)'
const effectiveness = (of: string, units: number, ratio: number, value: number): Check => ({
  id: `${of}-${units}-${ratio}`, of, in: { units, ratio }, out: { out: { value, unit: '1', tolerance: 1e-6 } }, source: relations, confidence: 'computed by a reference library',
})
/** Both streams unmixed by the closed solution of the two transport equations in Bessel form, by quadrature: tests/reference/cooling.py. */
const bessel: readonly (readonly [number, number, number])[] = [[0.25, 0.25, 0.21522425902], [0.5, 0.75, 0.34159476766], [1.5, 0.25, 0.716153758], [1.5, 1, 0.56017293254], [2, 0.75, 0.67108029159], [5, 0.25, 0.95907427655]]
const chart = 'The book reads 0.82 from its chart; the exact relation for both streams unmixed gives 0.836'
const example114 = { arrangement: 'crossUnmixed', conductance: 4000, hotRate: 1500, coldRate: 4197, hotIn: '250 °C', coldIn: '35 °C' } as const
const mean = (id: string, first: number, second: number, value: number, tolerance: number, source: string): Check => ({
  id, of: 'mean-difference', in: { first, second }, out: { out: { value, unit: 'K', tolerance } }, source, confidence: 'confirmed by search',
})

export const checks: readonly Check[] = [
  effectiveness('effectiveness-counter', 1, 0.5, 0.564733), effectiveness('effectiveness-counter', 2, 0.75, 0.721827), effectiveness('effectiveness-counter', 3, 1, 0.75),
  effectiveness('effectiveness-parallel', 1, 0.5, 0.517913), effectiveness('effectiveness-parallel', 3, 1, 0.498761),
  effectiveness('effectiveness-cross-unmixed', 1, 0.5, 0.54749), effectiveness('effectiveness-cross-unmixed', 1, 1, 0.476222), effectiveness('effectiveness-cross-unmixed', 2, 0.5, 0.732409),
  effectiveness('effectiveness-cross-unmixed', 3, 0.75, 0.749406), effectiveness('effectiveness-cross-unmixed', 5, 1, 0.750904),
  effectiveness('effectiveness-cross-weaker-mixed', 2, 0.5, 0.717546), effectiveness('effectiveness-cross-weaker-mixed', 3, 1, 0.613341),
  ...bessel.map(([units, ratio, value]): Check => ({
    id: `cross-unmixed-bessel-${units}-${ratio}`, of: 'effectiveness-cross-unmixed', in: { units, ratio }, out: { out: { value, unit: '1', tolerance: 1e-10 } },
    source: 'Nusselt’s solution in Bessel form, quadrature with scipy 1.10.1', confidence: 'computed by a reference library',
  })),
  {
    id: 'cross-unmixed-nellis-klein', of: 'effectiveness-cross-unmixed', in: { units: 2.5, ratio: 0.6 }, out: { out: { value: 0.7632, unit: '1', tolerance: 5e-5 } },
    source: 'Nellis and Klein, Heat Transfer (2009), cross flow with both fluids unmixed, conductance 75 W/K, capacity rates 50 and 30 W/K, as printed in a solver’s manual', confidence: 'confirmed by search',
    differs: 'That solution is the closed approximation; the exact series used here lies about 1 % lower',
  },
  {
    id: 'incropera-11-3', of: 'transfer-units-for', in: { arrangement: 'crossUnmixed', effectiveness: 377700 / (1889 * 265), ratio: 1889 / 4197 }, out: { out: { value: 2.1, unit: '1', tolerance: 0.05 } },
    source: `${incropera}, example 11.3, read from a chart`, confidence: 'confirmed by search',
  },
  { id: 'incropera-11-4-units', of: 'effectiveness-ntu', in: example114, out: { units: { value: 2.67, unit: '1', tolerance: 0.005 } }, source: `${incropera}, example 11.4`, confidence: 'confirmed by search' },
  { id: 'incropera-11-4-heat', of: 'effectiveness-ntu', in: example114, out: { heat: { value: 264, unit: 'kW', tolerance: 0.5 }, hotOut: { value: 73.7, unit: '°C', tolerance: 0.05 } }, source: `${incropera}, example 11.4`, confidence: 'confirmed by search', differs: chart },
  mean('lmtd-incropera-11-1', 100 - 40.2, 60 - 30, 43.2, 0.05, `${incropera}, example 11.1`),
  mean('lmtd-counter', 100 - 40.2, 60 - 30, 43.200409294, 1e-8, 'Test suite of the ht library, counter flow'),
  mean('lmtd-parallel', 100 - 30, 60 - 40.2, 39.75251118, 1e-8, 'Test suite of the ht library, parallel flow'),
  mean('lmtd-equal-ends', 40, 40, 40, 0, 'Limit at equal ends, as the test suite of the ht library asks'),
  mean('lmtd-cengel-11-4', 80, 160 - 300960 / 8620 - 20, 92, 0.05, 'Çengel and Ghajar, Heat and Mass Transfer, example 11-4'),
  {
    id: 'cooler-holman-10-4', of: 'cooler-size', in: { heat: 189490, hotIn: '110 °C', hotOut: '75 °C', coldIn: '35 °C', coldOut: '75 °C' }, out: { difference: { value: 37.44, unit: 'K', tolerance: 0.005 }, conductance: { value: 320 * 15.81, unit: 'W/K', tolerance: 320 * 0.01 } },
    source: 'Holman, Heat Transfer, example 10-4: 320 W/(m² K) over 15.81 m²', confidence: 'confirmed by search',
  },
  { id: 'outlet-incropera-11-1', of: 'warmed-outlet', in: { inlet: '30 °C', heat: 8524, rate: 0.2 * 4178 }, out: { out: { value: 40.2, unit: '°C', tolerance: 0.05 } }, source: `${incropera}, example 11.1`, confidence: 'confirmed by search' },
  { id: 'outlet-cengel-11-4', of: 'cooled-outlet', in: { inlet: '160 °C', heat: 301e3, rate: 2 * 4310 }, out: { out: { value: 125, unit: '°C', tolerance: 0.5 } }, source: 'Çengel and Ghajar, Heat and Mass Transfer, example 11-4', confidence: 'confirmed by search' },
]
