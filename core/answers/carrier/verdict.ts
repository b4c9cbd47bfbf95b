// core/answers/carrier/verdict.ts: the carrier debate in its first line, and what one contrary chick would do.
import type { CarrierAnswer } from '../../answer.ts'
import { formatRatio, type Ratio, toNumber } from '../../engine/num.ts'
import type { Debated } from '../../flock/debated.ts'
import type { Member } from '../../flock/member.ts'
import { carriedName } from '../../flock/carriedName.ts'
import { article, isOwnName, pronouns } from '../../flock/names.ts'
import type { Footing } from '../../flock/weigh.ts'
import { fitting } from '../parts.ts'

/** 'under 1 in 100', '2 in 3', 'about 17 in 100'. */
export function chanceWords(p: Ratio): string {
  const share = toNumber(p)
  if (p.d <= 10n) return `${p.n} in ${p.d}`
  if (share < 0.01) return `under 1 in ${10 ** Math.min(6, Math.floor(-Math.log10(share)))}`
  if (share > 0.99) return 'over 99 in 100'
  return `about ${Math.round(share * 100)} in 100`
}

export const nameOf = ({ name, sex }: Member): string =>
  isOwnName(name) || isYoung.test(name) ? name : `the ${pronouns(sex).kind}`
const isYoung = /^the (?:chick|daughter|son)$/u

/** Below this a bird is as good as pure. */
const hardly = 0.05

/** The summary, by what is known. `seen` are the readings on its offspring, in words; `test` the first test mating. */
export function verdict(
  debated: Debated,
  bird: Member,
  { p, footing }: { readonly p: Ratio; readonly footing: Footing },
  seen: readonly string[],
  alsoSure: readonly string[],
  test: CarrierAnswer['moreChicks'][number] | undefined,
): string {
  const what = carriedName(debated.allele)
  const name = nameOf(bird)
  const { he } = pronouns(bird.sex)
  if (p.n === p.d) {
    const also = alsoSure.length > 0 ? `, and so does ${alsoSure.join(' and ')}` : ''
    const impure = debated.pureFor === undefined ? '' : ` and is not pure for ${debated.pureFor}`
    return fitting(`Certain: ${name} carries ${what}${impure}${also}.`, `Certain: ${name} carries ${what}.`)
  }
  if (p.n === 0n)
    return debated.pureFor === undefined
      ? `No: ${name} does not carry ${what}.`
      : `${name} is pure for ${debated.pureFor} and does not carry ${what}.`.replace(/^./u, (first) =>
          first.toUpperCase(),
        )
  if (footing === 'open') {
    const start = `Nothing told so far says whether ${name} carries ${what}`
    const chicks = test ? `${test.for95} ${debated.clear} chicks ${test.mating}, ${test.for99} to be sure` : ''
    return fitting(`${start}. A test mating does: ${chicks}.`, `${start}; a test mating does.`)
  }
  const chance = chanceWords(p)
  if (seen.length === 0) return `${chance} that ${name} carries ${what}.`.replace(/^./u, (first) => first.toUpperCase())
  if (debated.pureFor !== undefined && toNumber(p) < hardly)
    return fitting(
      `Almost surely pure for ${debated.pureFor}: after ${seen.join(' and ')}, ${chance} that ${he} carries ${what}.`,
      `Almost surely pure for ${debated.pureFor}: ${chance} that ${he} carries ${what}.`,
    )
  const orElse = debated.pureFor === undefined ? '' : `; otherwise pure for ${debated.pureFor}`
  return fitting(
    `After ${seen.join(' and ')}: ${chance} that ${he} carries ${what}${orElse}.`,
    `After ${seen.join(' and ')}: ${chance} that ${he} carries ${what}.`,
    `After ${seen.join(' and ')}: ${chance} that ${he} carries it.`,
    `After what was seen of the chicks: ${chance} that ${name} carries ${what}.`,
  )
}

/** Chicks of a mate that hides the allele in all of them, whatever the bird is. */
export const saysNothing = (debated: Debated, bird: Member, seen: readonly string[]): string =>
  fitting(
    `${seen.join(' and ')} say nothing of ${nameOf(bird)}: a mate free of ${carriedName(debated.allele)} hides it in all of them.`,
    `The chicks so far say nothing: a mate free of ${carriedName(debated.allele)} hides it in all of them.`,
  )

/** Which cock the chicks speak for. */
export function fatherVerdict(rivals: readonly { readonly sire: string; readonly odds: number }[]): string {
  const [first, second] = rivals
  if (first === undefined || second === undefined) return ''
  if (first.odds === second.odds) return `The chicks do not tell ${rivals.map(({ sire }) => sire).join(' from ')}.`
  if (second.odds === 0) return `${first.sire} is the father: the others cannot have given these chicks.`
  return fitting(
    `${first.sire} is the likelier father, ${inHundred(first.odds)}; ${second.sire} ${inHundred(second.odds)}.`,
  )
}

/** What would tell the cocks apart: a test of one that may be free of it. */
export function fatherTest(
  debated: Debated,
  rivals: CarrierAnswer['rivals'],
  test: CarrierAnswer['moreChicks'][number] | undefined,
): string {
  const open = rivals.filter(({ odds, why }) => odds > 0 && !why.startsWith('certain') && !why.endsWith('himself'))
  const doubted = open.at(-1)
  if (!doubted || !test || debated.acts !== 'recessive' || rivals.filter(({ odds }) => odds > 0).length < 2) return ''
  return `To tell, mate ${doubted.sire} ${test.mating}: ${test.for99} clear chicks rule him out, 99 in 100; one that is ${debated.shows} keeps him in.`
}

/** What one chick that shows the allele would prove. */
export function contraryChick(debated: Debated, bird: Member): string {
  const name = nameOf(bird)
  const { shows } = debated
  if (debated.acts !== 'recessive')
    return `One chick of ${pronouns(bird.sex).his} that is ${shows}, from a mate free of it, proves that ${name} has it.`
  if (debated.on === 'Z')
    return `One ${shows} daughter proves it at once: her one Z is her father's. ${article(shows) === 'an' ? 'An' : 'A'} ${shows} son proves it of ${name} too, and his mother then shows it herself.`
  return `One chick that is ${shows} proves it at once: it has a copy from each parent, so both carry it.`
}

/** How the answer hangs on the chance taken before the chicks. */
export function sensitivity(footing: Footing, soFar: number): string | null {
  if (footing !== 'even' || soFar === 1 || soFar === 0) return null
  const after = (before: number): string => inHundred((before * soFar) / (before * soFar + 1 - before))
  return `That takes an even chance before the chicks. Had it been 1 in 4, it would now be ${after(1 / 4)}; had it been 3 in 4, ${after(3 / 4)}.`
}

const inHundred = (p: number): string => {
  if (p < 0.001) return 'under 1 in 1000'
  if (p < 0.01) return `${Math.round(p * 1000)} in 1000`
  return p > 0.99 ? 'over 99 in 100' : `${Math.round(p * 100)} in 100`
}

/** The exact fraction, where it is short enough to be read. */
export const shortFraction = (p: Ratio): string | null => (p.d < 1_000_000n ? formatRatio(p) : null)
