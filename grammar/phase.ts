// grammar/phase.ts: how linked genes lie in a bird, where a keeper tells it: "S K on one Z, s k on the other", "in repulsion".
import { loci as book, type LocusId } from '../core/data/loci.ts'
import { linkageGroups } from '../core/data/linkage.ts'
import type { BirdRef, Question } from '../core/question.ts'

export type Phase = 'coupling' | 'repulsion'
/** The message with each pair of genes written as genotypes, and how they lie. */
export type PhaseTold = { readonly text: string; readonly phase: Phase | undefined }

/** Loci that keepers name by one letter or two, dominant first. */
const named: readonly (readonly [LocusId, string, string])[] = (
  ['S', 'K', 'B', 'Id', 'P', 'O', 'Cr', 'I', 'F', 'R', 'Cp', 'Ml', 'Pg'] as const
).map((id) => [id, id, book[id].wild])

/** 'S' and 's' -> 'S/s+', where a locus goes by that letter. */
function genotypeOf(one: string, other: string): string | undefined {
  const found = named.find(
    ([id]) => id.toLowerCase() === one.toLowerCase() && id.toLowerCase() === other.replace(/\+$/u, '').toLowerCase(),
  )
  return found && one !== other ? `${found[1]}/${found[2]}` : undefined
}
const isDominant = (symbol: string): boolean => /^\p{Lu}/u.test(symbol)

function written(a: string, b: string, c: string, d: string): PhaseTold | undefined {
  const [first, second] = [genotypeOf(a, c) ?? genotypeOf(c, a), genotypeOf(b, d) ?? genotypeOf(d, b)]
  if (!first || !second || isDominant(a) === isDominant(c) || isDominant(b) === isDominant(d)) return undefined
  return { text: `${first} ${second}`, phase: isDominant(a) === isDominant(b) ? 'coupling' : 'repulsion' }
}

const symbol = String.raw`([A-Za-z]{1,2}\+?)`
/** "S K on one Z and s k on the other"; "SK/sk". */
const onStrands = [
  new RegExp(
    String.raw`\b${symbol}[ ,/]?(?:and )?${symbol} (?:are )?(?:both )?(?:on|in) (?:the )?(?:one|same|1|1st|first)(?: (?:z|chromosome|strand|side|copy|arm))?,?(?: and| with)? ?${symbol}[ ,/]?(?:and )?${symbol} (?:on|in) (?:the )?other(?: (?:one|z|chromosome|strand|side|copy|arm))?`,
    'iu',
  ),
  /(?<![\p{L}+/])(Cr|Id|Ml|[SKBPOIF])(Id|Pg|[SKBPOIF])\/(cr|id|ml|[skbpoif]|[SKBPOIF])(id|pg|[skbpoif]|[SKBPOIF])(?![\p{L}+/])/u,
]

const words: readonly (readonly [RegExp, string])[] = [
  [/silver/iu, 'S/s+'],
  [/slow(?:[- ]?feather\w*)?/iu, 'K/k+'],
  [/barring|bars/iu, 'B/b+'],
  [/clear shanks|yellow shanks/iu, 'Id/id+'],
  [/pea ?combs?/iu, 'P/p+'],
  [/blue (?:egg|shell)s?(?: gene)?/iu, 'O/o+'],
  [/crest/iu, 'Cr/cr+'],
  [/frizzle|frizzling/iu, 'F/f+'],
  [/dominant white/iu, 'I/i+'],
]
const from = String.raw`from (?:his |her |the |one |a )?(\w+)`
const part = (word: string): string =>
  /^(?:dad|father|sire|daddy)$/iu.test(word)
    ? 'M'
    : /^(?:mum|mom|mother|dam|mam)$/iu.test(word)
      ? 'F'
      : word.toLowerCase()

/** "silver from his dad and slow feathering from his mum"; "silver and slow feathering both from his dad". */
function fromParents(text: string): PhaseTold | undefined {
  for (const [i, [one, first]] of words.entries())
    for (const [k, [other, second]] of words.entries()) {
      if (i === k) continue
      const apart = new RegExp(
        String.raw`(?:the )?(?:${one.source}) ${from},?(?: and| but)? (?:the )?(?:${other.source}) ${from}`,
        'iu',
      ).exec(text)
      const both = new RegExp(
        String.raw`(?:the )?(?:${one.source}) and (?:the )?(?:${other.source}) (?:both )?${from}`,
        'iu',
      ).exec(text)
      const found = apart ?? both
      if (!found) continue
      const phase = both || part(found[1]!) === part(found[2]!) ? 'coupling' : 'repulsion'
      return { text: text.replace(found[0], `${first} ${second}`), phase }
    }
  return undefined
}

/** Two looks of one gene on the Z, the dominant one first. */
const looks: readonly (readonly [dominant: string, recessive: string, genes: string])[] = [
  ['silver', 'gold', 'S/s+'],
  ['slow', 'fast', 'K/k+'],
  ['barred', 'unbarred', 'B/b+'],
]
const male = '(?:cock|cockerel|roo|rooster|male)'
const female = '(?:hen|pullet|female|mum|mom|mother|dam)'
/** "a silver slow cock out of a gold fast hen": what she lacks she gave him lacking, on one Z; so he has both on the other. */
function outOfHen(text: string): PhaseTold | undefined {
  for (const [one, lacksOne, first] of looks)
    for (const [other, lacksOther, second] of looks) {
      if (one === other) continue
      const found = new RegExp(
        String.raw`\b${one}[,/ ]+(?:and )?${other}(?:[- ]feather\w*)? ${male} (?:out of|from|bred from|whose (?:mum|mom|mother|dam) (?:was|is)) (?:an? |his )?(?:${lacksOne}[,/ ]+(?:and )?${lacksOther}|${lacksOther}[,/ ]+(?:and )?${lacksOne})(?:[- ]feather\w*)? ${female}\b`,
        'iu',
      ).exec(text)
      if (found) return { text: text.replace(found[0], `${first} ${second} cock`), phase: 'coupling' }
    }
  return undefined
}

export function phaseTold(text: string): PhaseTold {
  const told = rewritten(text)
  return told.phase === undefined
    ? told
    : { ...told, text: told.text.replace(having, '').replace(feathering, '$1 feathered') }
}
/** "a cock with S/s+ K/k+ over hens": the genes are the cock's, and no mate's. */
const having =
  /\b(?:with|has|having|is|carries|carrying|got) (?=(?:S\/s|K\/k|B\/b|Id\/id|P\/p|O\/o|Cr\/cr|I\/i|F\/f|Ml\/ml|Pg\/pg)\+ )/u
const feathering = /\b(fast|slow)(?= (?:hens?|pullets?|girls?)\b)/giu

function rewritten(text: string): PhaseTold {
  const short = text.slice(0, 2000)
  for (const pattern of onStrands) {
    const found = pattern.exec(short)
    const told = found && written(found[1]!, found[2]!, found[3]!, found[4]!)
    if (told) return { text: text.replace(found[0], told.text), phase: told.phase }
  }
  const parents = /\bfrom\b/iu.test(short) ? fromParents(text) : undefined
  if (parents) return parents
  const out = outOfHen(short)
  if (out) return { ...out, text: out.text + text.slice(short.length) }
  const word = /\b(coupling|coupled|repulsion|repulsed)\b/iu.exec(short)?.[1]?.toLowerCase()
  return { text, phase: word === undefined ? undefined : word.startsWith('coup') ? 'coupling' : 'repulsion' }
}

/** Two loci of one linkage group at which a bird of told genotype has two unlike alleles. */
function linkedIn({
  genotype = {},
}: BirdRef): { readonly on: 'A' | 'Z'; readonly loci: readonly [string, string] } | undefined {
  for (const { on, loci } of linkageGroups) {
    const [first, second, ...more] = loci.filter(
      (locus) => genotype[locus]?.length === 2 && genotype[locus][0] !== genotype[locus][1],
    )
    if (first !== undefined && second !== undefined && more.length === 0) return { on, loci: [first, second] }
  }
  return undefined
}

/** The bird as out of two parents that gave it its genes in that order. */
function lying(bird: BirdRef, phase: Phase): BirdRef {
  const linked = bird.breed === undefined && bird.cross === undefined ? linkedIn(bird) : undefined
  if (!linked) return bird
  const { loci, on } = linked
  const { asWritten: _, genotype = {}, ...rest } = bird
  const strand = (which: 0 | 1): readonly (readonly [string, string])[] =>
    loci.map((locus, i) => [locus, genotype[locus]![i === 1 && phase === 'repulsion' ? 1 - which : which]!] as const)
  const parent = (which: 0 | 1, copies: 1 | 2): BirdRef => ({
    genotype: Object.fromEntries(
      strand(which).map(([locus, allele]) => [locus, Array.from({ length: copies }, () => allele)]),
    ),
  })
  const others = Object.fromEntries(Object.entries(genotype).filter(([locus]) => !loci.includes(locus)))
  return {
    ...rest,
    ...(Object.keys(others).length > 0 ? { genotype: others } : {}),
    cross: { sire: parent(0, 2), dam: parent(1, on === 'Z' ? 1 : 2) },
  }
}

/** The question with what was told of how the genes lie. */
export function withPhase(question: Question, phase: Phase | undefined): Question {
  if (phase === undefined || question.kind !== 'cross') return question
  return {
    ...question,
    matings: question.matings.map(({ sire, dam }) => ({ sire: lying(sire, phase), dam: lying(dam, phase) })),
  }
}
