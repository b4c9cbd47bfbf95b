// bot/render/signs.ts: how to read the sex of a chick, when, how surely, and what spoils it.
import { line, strong } from './document.ts'
import { and, inHundred } from './numbers.ts'
import type { Block } from './document.ts'
import type { Sexing, Sign } from '../../core/answer.ts'

/** A figure only where the core has one and it does not rest on memory alone. */
const sureness = (accuracy: number | null, status: Sign['status']): string =>
  accuracy === null || status === 'from memory' ? '' : inHundred(accuracy)

const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)

/** 'Wing feathers, day 0 to 2: cockerel …; pullet ….' */
export const signWords = (sign: Sign): string =>
  `${sentence(sign.sign)}, ${sign.window}: cockerel ${sign.cockerel}; pullet ${sign.pullet}.`

/** How sure the reading is, in one sentence; nothing where it is not known. */
export function sure(sexing: Sexing): string {
  const [best] = sexing.signs
  if (!best) return ''
  const figure = sureness(sexing.accuracy, best.status)
  if (!figure) return 'How often that reads right I know only from memory, so try it on a few chicks you keep.'
  const practice = best.status === 'common practice' ? ', as keepers find' : ''
  return `${sentence(figure)} end up in the right pen${practice}.`
}

/** The signs that count together, and how sure they make it. */
export function howToRead(sexing: Sexing, signs: number): readonly Block[] {
  return sexing.signs.slice(0, signs).map((sign, i) => {
    const lead = i === 0 ? strong('Read: ') : 'Also: '
    return line(lead, signWords(sign), i === 0 ? ` ${sure(sexing)}` : '')
  })
}

export function later(sexing: Sexing): readonly Block[] {
  if (!sexing.laterSign) return []
  const when = sexing.verdict === 'yes' ? 'To check, ' : 'Later, '
  const { window, cockerel, pullet } = sexing.laterSign
  return [line(`${when}${window}: cockerels ${cockerel}; pullets ${pullet}.`)]
}

export const spoilers = (sexing: Sexing): readonly Block[] =>
  sexing.breaks.length > 0 ? [line(`What spoils it: ${and(sexing.breaks.slice(0, 4))}.`)] : []

/** What the other way round gives, where that is the usual mistake. */
export const otherWay = (sexing: Sexing): readonly Block[] =>
  sexing.reverse ? [line(`The other way round: ${sexing.reverse.says}`)] : []

/** Of those called pullets so many are pullets. */
export function pens(sexing: Sexing): readonly Block[] {
  const [best] = sexing.signs
  if (!best || best.status === 'from memory' || sexing.pulletsTrue === null || sexing.cockerelsTrue === null) return []
  return [
    line(
      `Of those you call pullets, ${inHundred(sexing.pulletsTrue)} are; of those you call cockerels, ${inHundred(sexing.cockerelsTrue)}.`,
    ),
  ]
}
