/**
 * How the browser's code is cut into files. Few files that are loaded together beat many small ones: each costs a name, a request
 * and a fresh start for the compressor. What stands alone here is loaded alone: the reader of typed text when a field is entered.
 */
export const groups = [
  // On every page: which build and units are shown, and what wakes when.
  { name: 'reach', test: /preload-helper|\/src\/state\/(store|system|kept|own)\.ts|\/islands\/parts\/whenWanted\.ts|\/src\/url\.ts|\/islands\/(head|place|search\/open|offline\/(keep|state))\.ts/, priority: 3 },
  { name: 'core', test: /\/shared\/(quantity\/(kinds|units|write|quantity|si|grade)|build\/(field|pointValue)|formula\/(formula|trace)|calculation\/calculation)\.ts|\/src\/islands\/parts\/(Field|typed|heard|useStore|Symbol|say|Choose|difference)\.tsx?|\/islands\/calculator\/shapes\.ts|\/node_modules\/preact\/|rolldown\/runtime/, priority: 2 },
  { name: 'reader', test: /\/shared\/quantity\/(read|number|dash)\.ts|\/src\/islands\/parts\/reader\.ts/, priority: 2 },
  // Wanted by more than the folds, which else would take them in.
  { name: 'chart', test: /\/islands\/chart\/(Chart|path|scale)\.tsx?|\/node_modules\/d3-array\//, priority: 1 },
  { name: 'files', test: /\/islands\/parts\/files\.ts|\/shared\/link\/note\.ts/, priority: 1 },
  // What a reader of a calculator opens: one fold seldom comes alone.
  { name: 'working', test: /\/islands\/working\/(fill|ways|math|copy)\.ts/, priority: 1 },
  { name: 'folds', test: /\/islands\/calculator\/(\w+Fold\.tsx|link\.ts)/, priority: 0 },
]
