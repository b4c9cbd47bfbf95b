// core/answers/cross.ts: the `cross` answer: each mating played through, its verdict in one line, what was assumed, what to beware of.
import type { Caution, CrossAnswer, Crossed, Source } from '../answer.ts'
import { breedNamed } from '../breeds.ts'
import { groundFor } from '../cross/pedigree.ts'
import { mate } from '../cross/mate.ts'
import { nameOfBird } from '../cross/seen.ts'
import { linkageNotes } from '../cross/linked.ts'
import { crossCautions } from '../cross/cautions.ts'
import { cautions } from '../data/cautions.ts'
import { loci } from '../data/loci.ts'
import { henSources } from '../hen/sources.ts'
import type { Locus } from '../vocabulary.ts'
import type { Aspect, BirdRef, CrossQuestion } from '../question.ts'
import { assumptionWords, birdsOf, fitting, uniqueSources } from './parts.ts'
import { withRules } from './rulesBehind.ts'
import { countedSummary } from './countedSummary.ts'
import { severalSummary } from './crossSeveral.ts'
import { summaryOf } from './crossSummary.ts'
import { toldSplit } from './toldSplit.ts'

/** More matings than these in one message are answered for the first ones only. */
const mostMatings = 12

const book: Readonly<Record<string, Locus>> = loci

const symbolsIn = (alleles: string): readonly string[] => alleles.split(' ').map((pair) => pair.split('/')[0] ?? '')

/** Works behind the loci that set the chicks apart, and behind the figures of the signs. */
function sourcesOf({ cases }: Crossed): readonly Source[] {
  const shown = cases
    .flatMap(({ cockerels, pullets }) => [...cockerels, ...pullets])
    .flatMap(({ alleles }) => symbolsIn(alleles))
  const symbols = new Set(shown)
  const works = Object.values(book).filter(({ alleles }) => alleles.some((allele) => symbols.has(allele)))
  const signs = cases.flatMap(({ sexing }) => sexing.signs).map(({ basis, status }) => ({ ref: basis, status }))
  return [...signs, ...works.flatMap(({ sources }) => sources.slice(0, 2))]
}

/** What the core took for granted of the birds themselves. */
function takenForGranted(
  matings: readonly { readonly sire: BirdRef; readonly dam: BirdRef }[],
  crossed: readonly Crossed[],
): readonly string[] {
  const bare = matings.some(({ sire, dam }) =>
    [sire, dam].some((bird) => bird.breed === undefined && bird.cross === undefined && bird.genotype !== undefined),
  )
  const onBlack = matings.some(({ sire, dam }) => 'E' in groundFor(sire, dam))
  const bredOn = matings.some(({ sire, dam }) =>
    [sire, dam].some((bird) => bird.cross?.sire.cross ?? bird.cross?.dam.cross),
  )
  const leftOut = Math.max(...crossed.flatMap(({ cases }) => cases.map((one) => one.leftOut ?? 0)))
  return [
    ...linesTaken(matings.flatMap(({ sire, dam }) => [sire, dam])),
    ...(bare ? [`genes that are not told are wild type${onBlack ? ', on a black ground' : ''}`] : []),
    ...(bredOn ? ['shares are over many such parents; a single bird gives some of these kinds only'] : []),
    ...new Set(matings.slice(0, 2).flatMap(({ sire, dam }) => linkageNotes(sire, dam).slice(0, 2))),
    ...(leftOut > 0.005
      ? [`kinds that are each very rare are left out, ${Math.ceil(leftOut * 100)} in 100 chicks together`]
      : []),
  ]
}

/** Breeds whose line nobody told, though it decides the eggs. */
function linesTaken(birds: readonly BirdRef[]): readonly string[] {
  const open = birds.filter(({ breed, line }) => breed !== undefined && line === undefined)
  const usual = open.flatMap(({ breed }) => {
    const own = breedNamed(breed!)?.usualLine
    return own === undefined ? [] : [`${breed} (${own})`]
  })
  const named = [...new Set(usual)]
  return named.length === 0 ? [] : [`the lines are the usual ones: ${named.join(', ')}`]
}

const onceEach = (cautions: readonly Caution[]): readonly Caution[] => [
  ...new Map(cautions.map((one) => [one.text, one])).values(),
]

/** Asked whether it does harm, or asked nothing else: what of the mating does; or, asked first, that nothing known does. */
function harmWords(due: readonly Caution[], aspects: readonly Aspect[]): string | undefined {
  const nothingElse = aspects.every((aspect) => aspect === 'why')
  if (!aspects.includes('welfare') && !nothingElse) return undefined
  const isAsked = aspects.includes('welfare')
  const heavy = (text: string): boolean => text === cautions.frizzle.text // of all chicks, and not of a few heads
  const found = due.find(
    ({ topic, text }) =>
      topic === 'lethal' || (topic === 'welfare' && (isAsked || heavy(text))) || (topic === 'size' && isAsked),
  )?.text
  const none = 'No harm that I know of comes of this mating: no killer gene and no feather fault is doubled.'
  if (found !== undefined) return fitting(found)
  return aspects[0] === 'welfare' ? fitting(none) : undefined
}

const everything = { hen: true, reverse: true } as const
/** The egg is asked about, and nothing of the chicks. */
const asksOfShells = (aspects: readonly Aspect[]): boolean =>
  aspects.includes('shell') &&
  !aspects.some((aspect) => aspect === 'sexing' || aspect === 'chicks' || aspect === 'adults')

export function answerCross(question: CrossQuestion): CrossAnswer {
  const matings = question.matings.slice(0, mostMatings)
  const why = question.aspects.some((aspect) => aspect === 'why' || aspect === 'more')
  const want = asksOfShells(question.aspects) ? { ...everything, shells: true } : everything
  const crossed = matings.map(({ sire, dam }) => mate(sire, dam, want)).map((one) => (why ? withRules(one) : one))
  const summaries = crossed.map((one, i) =>
    summaryOf(one, question.aspects, question.shown ?? toldSplit(matings[i]!, one, question.aspects), question.outOf),
  )
  const cautions = onceEach(crossed.flatMap((one, i) => crossCautions(one, matings[i]!, question.aspects)))
  const harm = question.shown ? undefined : harmWords(cautions, question.aspects)
  const named = crossed.map((_, i) => `${nameOfBird(matings[i]!.sire)} on ${nameOfBird(matings[i]!.dam)}`)
  const counted = countedSummary(crossed, question.counted ?? [], matings)
  const dropped = question.matings.length - matings.length
  return {
    kind: 'cross',
    summary:
      harm ??
      counted ??
      (crossed.length === 1
        ? summaries[0]!
        : severalSummary(matings, crossed, named, question.aspects, question.shown)),
    assumptions: [
      ...assumptionWords(question.assumed),
      ...takenForGranted(matings, crossed),
      ...(dropped > 0 ? [`only the first ${mostMatings} matings are answered`] : []),
    ],
    assumed: question.assumed,
    cautions,
    sources: uniqueSources([...crossed.flatMap(sourcesOf), ...henSources(question.aspects)]),
    ...birdsOf({ sire: matings.map(({ sire }) => sire), dam: matings.map(({ dam }) => dam) }),
    crosses: crossed,
  }
}
