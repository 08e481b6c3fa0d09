import { premixDoseFor } from '@trochoid/compute/fuel/premixDoseFor.ts'
import { oilDose, premixShare, tankVolume } from '@trochoid/compute/fuel/quantities.ts'
import { writeNumber, type System } from '@trochoid/compute/quantity/write.ts'
import { useState } from 'preact/hooks'
import { round, Sheet, Words } from '../plot/Sheet.tsx'
import { shown } from '../plot/shown.ts'
import { Slide } from '../plot/Slide.tsx'

export type Card = { readonly share: number; readonly tank: number }

const gallon = 3.785411784e-3
/** Fills that a pump shows: even numbers of litres or gallons, up to a full tank. */
export function fills(tank: number, system: System): readonly number[] {
  const unit = system === 'imperial' ? gallon : 1e-3
  const step = system === 'imperial' ? 1 : 5
  const count = Math.floor(tank / (unit * step) + 1e-9)
  const each = Math.ceil(count / 16)
  return Array.from({ length: Math.floor(count / each) }, (_, i) => unit * step * each * (i + 1))
}
/** Needle of the gauge and what to pour for a fill to the brim; the fuel that is there holds the same share. */
export const marks = [0, 0.25, 0.5, 0.75] as const
export const doseOf = (share: number, fuel: number): number => premixDoseFor({ wanted: share, added: fuel, present: 0, presentShare: 0 })

const left = 40, right = 600, top = 30, bottom = 110

/** A card to print and hang by the pump: oil for each fill, and for each mark of the gauge. */
export function MixCard({ card, system }: { card: Card; system: System }) {
  const [now, set] = useState(card)
  const v = shown(tankVolume, system), o = shown(oilDose, system), s = shown(premixShare, system)
  const list = fills(now.tank, system)
  const x = (part: number): number => round(left + (right - left) * part)
  return (
    <div>
      <div class="row">
        <Slide name="Oil share" low={1} high={50} step={1} at={Math.round(now.share * 1000)} says={`${s.say(now.share)}, 1 in ${writeNumber(1 / now.share)}`} onMove={(p) => set({ ...now, share: p / 1000 })} />
        <Slide name="Tank" low={10} high={150} step={1} at={Math.round(now.tank * 1000)} says={v.say(now.tank)} onMove={(l) => set({ ...now, tank: l / 1000 })} />
      </div>
      <section class="mix-card" aria-label="Premix card">
        <p class="answer">Premix 1 in {writeNumber(1 / now.share)}: {s.say(now.share)} oil by volume, tank {v.say(now.tank)}</p>
        <Sheet says="The tank gauge with the oil to pour for a fill to the brim from each mark." height={150}>
          <rect class="area" x={left} y={top} width={right - left} height={bottom - top} />
          <rect class="line" x={left} y={top} width={right - left} height={bottom - top} />
          {marks.map((part) => (
            <g key={part}>
              <line class="line" x1={x(part)} x2={x(part)} y1={top} y2={bottom + 10} />
              <Words x={x(part) + 6} y={top + 26} strong>{part === 0 ? 'empty' : part === 0.25 ? '¼' : part === 0.5 ? '½' : '¾'}</Words>
              <Words x={x(part) + 6} y={bottom - 12}>{o.say(doseOf(now.share, now.tank * (1 - part)))}</Words>
            </g>
          ))}
          <Words x={right} y={bottom + 28} anchor="end">full: pour this for a fill to the brim from each mark</Words>
        </Sheet>
        <div class="scroll" tabindex={0} role="group" aria-label="Oil for each fill">
          <table>
            <thead><tr><th scope="col">{v.head('Fuel filled in')}</th><th scope="col" class="n">{o.head('Oil to pour in')}</th></tr></thead>
            <tbody>{list.map((fuel) => <tr key={fuel}><th scope="row">{writeNumber(v.of(fuel))}</th><td class="n">{writeNumber(o.of(doseOf(now.share, fuel)))}</td></tr>)}</tbody>
          </table>
        </div>
        <p class="small">Shares are of the fuel’s volume. The fuel already in the tank is taken to hold the same share. Pour the oil in first, so that the fuel mixes it. Fuel vapour burns: no flame, no sparks, in the open; wash oil off the skin.</p>
      </section>
      <p class="no-print"><button type="button" onClick={() => window.print()}>Print this card</button></p>
    </div>
  )
}
