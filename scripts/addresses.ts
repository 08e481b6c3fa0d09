// Adds the pages of the built site, and the headings of its articles, to the list of published addresses: from then on the build holds each of them.
//
//   npm run addresses

import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { addressesOf, published } from './build/addresses.ts'
import { root } from './root.ts'
import { builtPages } from './site/pages.ts'

const pages = addressesOf(builtPages().filter(({ kind }) => kind !== 'not-found' && kind !== 'moved')).filter((path) => path !== '')
const all = [...new Set([...published(), ...pages])].sort()
writeFileSync(join(root, 'scripts', 'addresses', 'published.txt'), `# Addresses below the base that were published. The build fails when one is no more and scripts/addresses/moved.json does not say where it went.\n${all.join('\n')}\n`)
console.log(`${all.length} published addresses`)
