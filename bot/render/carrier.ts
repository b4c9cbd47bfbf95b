// bot/render/carrier.ts: does this bird carry it: now, before, what moved it, what settles it.
import { bullets, line, strong } from './document.ts'
import { and, count, inHundred, number } from './numbers.ts'
import { wants, type Asked } from './asked.ts'
import { capital } from './tame.ts'
import type { Block, Document } from './document.ts'
import type { CarrierAnswer } from '../../core/answer.ts'

/** What the verdict leaves out: the exact fraction, and what was thought before the chicks. */
function odds({ before, now, nowFraction }: CarrierAnswer): Document {
  if (now === null || now >= 1 || now <= 0) return []
  const exactly = nowFraction === null ? [] : [`Exactly: ${nowFraction}`]
  const was = before === null || before === now ? [] : [`before the chicks it was ${inHundred(before)}`]
  const words = [...exactly, ...was].join('; ')
  return words === '' ? [] : [line(`${capital(words)}.`)]
}

/** 'clear chicks' speak against by this factor; below 1 is against. */
function factorWords(factor: number | null): string {
  if (factor === 0) return 'rules it out'
  if (factor === null) return 'proves it'
  if (Math.abs(factor - 1) < 1e-9) return 'says nothing either way'
  return factor > 1
    ? `${number(factor)} times likelier from a carrier`
    : `${number(1 / factor)} times likelier from a bird without it`
}

const moved = (answer: CarrierAnswer): Document =>
  answer.moved.length > 0
    ? [line('What moved it:'), bullets(answer.moved.map((m) => [`${m.reading}: ${factorWords(m.factor)}`]))]
    : []

/** '5 chicks without it for 95 in 100, 7 for 99'; after chicks that were seen already, '5 more'. */
function needed(for95: number | null, for99: number | null, some: boolean): string {
  const chicks = (n: number): string => `${count(n)}${some ? ' more' : ''} ${n === 1 ? 'chick' : 'chicks'} without it`
  if (for95 === null) return `${chicks(for99!)} for 99 in 100`
  if (for95 === 0) return `${chicks(for99!)} for 99 in 100; for 95 they are enough as they are`
  return `${chicks(for95)} for 95 in 100, ${for99 === null ? 'no number' : count(for99)} for 99`
}

const settle = (answer: CarrierAnswer, most: number): Document =>
  answer.moreChicks
    .filter(({ for99 }) => for99 !== 0)
    .slice(0, most)
    .map(({ mating, for95, for99 }): Block => {
      if (for95 === null && for99 === null) return line(`${mating}: no number of chicks without it settles this.`)
      return line(`To settle it, ${mating}: ${needed(for95, for99, answer.moved.length > 0)}.`)
    })

const conflict = (answer: CarrierAnswer): Document =>
  answer.conflict.length > 0
    ? [
        line(
          `These cannot all be true: ${and(answer.conflict.map((c) => `${c.bird} (${c.reading})`))}. One of them is misread, or a parent is another bird.`,
        ),
      ]
    : []

/** Cock by cock: the odds, and what speaks for him. */
const rivals = ({ rivals: cocks }: CarrierAnswer): Document => [
  bullets(cocks.map(({ sire, odds, why }) => [`${sire}: ${inHundred(odds)}${why === '' ? '' : `; ${why}`}.`])),
]

export function carrierBlocks(answer: CarrierAnswer, asked: Asked): Document {
  const full = wants(asked, 'why', 'more')
  if (answer.rivals.length > 1)
    return [
      line(strong(capital(answer.summary))),
      ...conflict(answer),
      ...rivals(answer),
      ...(answer.why ? [line(answer.why)] : []),
    ]
  return [
    line(strong(capital(answer.summary))),
    ...conflict(answer),
    ...(answer.possible ? odds(answer) : []),
    ...(answer.why ? [line(answer.why)] : []),
    ...(answer.possible && (full || answer.moved.length > 1) ? moved(answer) : []),
    ...(answer.possible && answer.now !== 1 ? settle(answer, full ? 4 : 2) : []),
    ...(answer.oneContraryChick ? [line(answer.oneContraryChick)] : []),
    ...(answer.sensitivity ? [line(answer.sensitivity)] : []),
  ]
}
