import { hotSideLimitOf } from '@trochoid/compute/boost/hotSideLimitOf.ts'
import { type hotMaterial } from '@trochoid/compute/boost/quantities.ts'
import { exhaustGasTemperature } from '@trochoid/compute/media/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure, type Build } from './figure.ts'
import { Bars, type Row } from './plot/Bars.tsx'
import { shown } from './plot/shown.ts'

type Grade = keyof typeof hotMaterial.choices
type Data = { gas: { low: number; middle: number; high: number } | null; limits: { name: string; limit: number }[] }

/** Grades that scale at one temperature share a row. */
const rows: readonly (readonly Grade[])[] = [['ferritic-409'], ['ferritic-430', 'stainless-304', 'stainless-321', 'stainless-347'], ['stainless-309'], ['stainless-310']]
const type = (grade: Grade): string => grade.split('-')[1]!

function from({ solved }: Build): Data {
  const hottest = solved.points.reduce<Readonly<Record<string, number>> | null>((best, { values }) => ((values['cooling.exhaustTemperature'] ?? 0) > (best?.['cooling.exhaustTemperature'] ?? 0) ? values : best), null)
  const low = hottest?.['cooling.exhaustTemperatureLow'], middle = hottest?.['cooling.exhaustTemperature'], high = hottest?.['cooling.exhaustTemperatureHigh']
  return {
    gas: low === undefined || middle === undefined || high === undefined ? null : { low, middle, high },
    limits: rows.map((grades) => ({ name: `${grades.length > 1 ? 'Types' : 'Type'} ${grades.map(type).join(', ')}`, limit: hotSideLimitOf({ material: grades[0]! }) })),
  }
}

export default figure<Data>({
  title: 'Gas at its hottest, and what the grades stand in air when heated over and over',
  from,
  summary({ gas, limits }, system) {
    const t = shown(exhaustGasTemperature, system)
    const stands = limits.map(({ name, limit }) => `${name.toLowerCase()} ${t.say(limit)}`).join('; ')
    if (!gas) return `Skin that holds in air: ${stands}. This build has no full-throttle points, so its gas is not drawn.`
    const above = limits.filter(({ limit }) => limit > gas.high).length
    const verdict = above === limits.length ? 'All of them are meant for more than the upper end of that band.' : above === 0 ? 'None of them is meant for the upper end of that band.' : `${above === 1 ? 'One row lies' : `${above} rows lie`} above the upper end of that band.`
    return `Skin that holds in air: ${stands}. The gas of this build comes at ${t.say(gas.low)} to ${t.say(gas.high)}. ${verdict} The metal is cooler than the gas, by how much only a reading tells.`
  },
  Picture({ data: { gas, limits }, system }) {
    const t = shown(exhaustGasTemperature, system)
    const bars: Row[] = limits.map(({ name, limit }) => ({ name, says: t.say(limit), parts: [{ of: t.of(limit), class: 'area' }] }))
    const band: Row[] = gas ? [{ name: `Gas of this build, ${t.say(gas.low)} to ${t.say(gas.high)}`, says: '', from: t.of(gas.low), parts: [{ of: t.of(gas.high) - t.of(gas.low), class: 'fill-accent' }] }] : []
    return <Bars says="Highest temperatures in air of groups of stainless steels, and the band of this build’s exhaust temperature." rows={[...bars, ...band]} limit={gas ? { at: t.of(gas.middle), says: 'gas, middle of the band' } : undefined} />
  },
  table({ gas, limits }, system) {
    const t = shown(exhaustGasTemperature, system)
    return { head: ['What', t.head('Temperature')], rows: [...limits.map(({ name, limit }) => [name, writeNumber(t.of(limit))]), ...(gas ? [['Gas, low', writeNumber(t.of(gas.low))], ['Gas, middle', writeNumber(t.of(gas.middle))], ['Gas, high', writeNumber(t.of(gas.high))]] : [])] }
  },
})
