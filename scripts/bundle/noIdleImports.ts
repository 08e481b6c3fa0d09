import { type Plugin } from 'vite'

/**
 * Leaves out imports that take nothing: when all names of a file were dropped, the bundler still asks for it, in case it does something by
 * being loaded. The package's own files do nothing by being loaded (`sideEffects: false`), so a reader need not fetch them.
 */
export const noIdleImports = (): Plugin => ({
  name: 'no-idle-imports',
  applyToEnvironment: ({ name }) => name === 'client',
  generateBundle(_, bundle) {
    const declares = (file: string): boolean => {
      const chunk = bundle[`assets/${file}`]
      return chunk?.type === 'chunk' && chunk.moduleIds.length > 0 && chunk.moduleIds.every((id) => /\/shared\//.test(id))
    }
    for (const chunk of Object.values(bundle)) if (chunk.type === 'chunk') chunk.code = chunk.code.replace(/import"\.\/([\w.-]+\.js)";/g, (whole, file: string) => (declares(file) ? '' : whole))
  },
})
