export type Question = { /** What has to be found together. */ readonly all: string; readonly words: readonly string[] }

/** Words of a question that stand in every page or in none. */
const filler = new Set('a an and are at be can car do does engine for from get has have how i if in is it its me mean means my need of off on or rotary should so that the then there this to vs was we what when where which who why will with would you your'.split(' '))

/** What people say, and what these pages call it. */
const called: Readonly<Record<string, string>> = {
  afr: 'lambda', an6: 'dash', antifreeze: 'glycol', crank: 'eccentric shaft', detonation: 'knock', dwell: 'coil charge', egt: 'exhaust temperature', hths: 'high-shear viscosity', iat: 'charge temperature',
  intercooler: 'charge cooler', lag: 'boost threshold', latency: 'dead time', litres: 'displacement', liter: 'displacement', litre: 'displacement', omp: 'metering pump', overheating: 'overheats', pinging: 'knock', redline: 'highest shaft speed',
  spool: 'boost threshold', staged: 'two stages', staging: 'two stages', stoich: 'stoichiometric', vapor: 'vapour', weight: 'grade',
}

/** A question in plain words as the search engine is asked it. */
export function question(text: string): Question {
  const typed = text.toLowerCase().split(/[^\p{L}\p{N}.:/’'-]+/u).filter((word) => word !== '')
  const telling = typed.filter((word) => !filler.has(word))
  const words = (telling.length > 0 ? telling : typed).flatMap((word) => (called[word] ?? word).split(' '))
  return { all: words.join(' '), words }
}
