// bot/render/signs.ts: how to read the sex of a chick, when, how surely, and what spoils it.
import { line, strong } from './document.ts'
import { and, inHundred } from './numbers.ts'
import { capital } from './tame.ts'
import type { Block } from './document.ts'
import type { Sexing, Sign } from '../../core/answer.ts'

/** A figure that rests on memory alone is never bare: 'perhaps', and no more than a judgement. */
const sureness = (accuracy: number, status: Sign['status']): string =>
  status === 'from memory' ? inHundred(accuracy).replace('about', 'perhaps') : inHundred(accuracy)
const basis = { read: '', 'common practice': ', as keepers find', 'from memory': ', by a breeder’s judgement' } as const

/** 'wing feathers, day 0 to 2: cockerels …; pullets ….' */
export const signWords = (sign: Sign): string =>
  `${sign.sign}, ${sign.window}: cockerels ${sign.cockerel}; pullets ${sign.pullet}.`

/** How sure the reading is, in one sentence; nothing where it is not known. */
export function sure({ signs: [best], accuracy }: Sexing): string {
  if (best?.sign === 'marks' && accuracy === null) return 'How often that is right in this breed, nobody has counted.'
  if (!best || accuracy === null) return ''
  const most = accuracy > 0.99 ? 'nearly all' : sureness(accuracy, best.status)
  return `${capital(most)} end up in the right pen${basis[best.status]}.`
}

/** The words say already what to look for. */
export const saidIn = (words: string, sign: Sign): boolean =>
  words.includes(sign.cockerel) && words.includes(sign.pullet)

/** The signs that count together, and how sure they make it; what the verdict has said is not said again. */
export function howToRead(sexing: Sexing, most: number, verdict: string): readonly Block[] {
  return sexing.signs.slice(0, most).map((sign, i) => {
    if (i > 0) return line('Also: ', signWords(sign))
    return line(
      strong('Read it '),
      saidIn(verdict, sign) ? `${sign.window}. ` : `by the ${signWords(sign)} `,
      sure(sexing),
    )
  })
}

const mechanisms: Partial<Record<Sign['sign'], string>> = {
  'down colour':
    'a hen hands the gene that tells, silver for instance, to her sons only; the cock lacks it, so her daughters go without',
  'head spot': 'a hen hands her bars to her sons only; the cock has none, so her daughters go without',
  'wing feathers': 'a hen hands her slow feathering to her sons only; the cock lacks it, so her daughters feather fast',
  'skin colour': 'a hen hands her clear skin to her sons only; the cock lacks it, so her daughters come dark',
  stripes: 'a cock chick has two doses of barring, a pullet one, and two make the down paler and the stripes blurred',
}

/** Why the sign tells, or why there is none. */
export const reason = ({ verdict, why, signs: [best] }: Sexing): string =>
  verdict === 'no' ? why : ((best && mechanisms[best.sign]) ?? '')

export const because = (sexing: Sexing): readonly Block[] =>
  reason(sexing) === '' ? [] : [line(strong('Why: '), `${reason(sexing)}.`)]

export function later(sexing: Sexing): readonly Block[] {
  if (!sexing.laterSign) return []
  const when = sexing.verdict === 'yes' ? 'To check, ' : 'Later, '
  const { window, cockerel, pullet } = sexing.laterSign
  return [line(`${when}${window}: cockerels ${cockerel}; pullets ${pullet}.`)]
}

export const spoilers = (sexing: Sexing): readonly Block[] =>
  sexing.breaks.length > 0 ? [line(`What spoils it: ${and(sexing.breaks.slice(0, 4))}.`)] : []

const otherWays = {
  yes: 'can be sexed at hatch',
  partly: 'can partly be sexed at hatch',
  no: 'cannot be sexed at hatch',
} as const

/** What the other way round gives, where that is the usual mistake. */
export const otherWay = ({ reverse }: Sexing): readonly Block[] =>
  reverse ? [line(`The other way round ${otherWays[reverse.verdict]}: ${reverse.says.replace(/\.?$/, '.')}`)] : []

/** Of those called pullets so many are pullets. */
export function pens({ signs: [best], pulletsTrue, cockerelsTrue }: Sexing): readonly Block[] {
  if (!best || pulletsTrue === null || cockerelsTrue === null) return []
  const [hens, cocks] = [sureness(pulletsTrue, best.status), sureness(cockerelsTrue, best.status)]
  return [line(`Of those you call pullets, ${hens} are; of those you call cockerels, ${cocks}.`)]
}
