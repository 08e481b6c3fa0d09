/**
 * How the browser's code is cut into files. Few files that are loaded together beat many small ones: each costs a name, a request
 * and a fresh start for the compressor. What stands alone here is loaded alone: the reader of typed text when a field is entered.
 */
export const groups = [
  // On every page: which build and units are shown, and what wakes when.
  { name: 'reach', test: /preload-helper|\/src\/state\/(store|system|kept|own)\.ts|\/islands\/parts\/whenWanted\.ts|\/src\/url\.ts|\/islands\/(head|place|search\/open|offline\/(keep|state))\.ts/, priority: 3 },
  { name: 'core', test: /\/shared\/(quantity\/(kinds|units|write|quantity|si)|build\/(field|pointValue)|formula\/(formula|trace)|calculation\/calculation)\.ts|\/src\/islands\/parts\/(Field|typed|useStore|Symbol|say|Choose|difference)\.tsx?|\/node_modules\/preact\//, priority: 2 },
  { name: 'reader', test: /\/shared\/quantity\/(read|number|dash)\.ts|\/src\/islands\/parts\/reader\.ts/, priority: 2 },
]
