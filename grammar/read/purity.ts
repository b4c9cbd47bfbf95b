// grammar/read/purity.ts: "is he pure for rose comb": what stands in place of a dominant is what a bird may carry unseen.
import { breedNamed, genesOf } from '../../core/breeds.ts'
import { loci, type LocusId } from '../../core/data/loci.ts'
import { traitsIn } from '../bird.ts'
import { traits } from '../words/traits.ts'
import { partName } from './carrierShown.ts'
import { chicksCounted, isClear, isShownBreed, saidOfAll, withoutCounts, type Chicks } from './chicks.ts'
import { commonOf, type Reader } from './common.ts'
import { pairsIn } from './pairs.ts'
import type { Bird } from '../bird.ts'
import { readingOf, type Reading } from '../reading.ts'
import type { Token } from '../token.ts'
import type { BirdRef, CarrierQuestion, FlockBird, Tally } from '../../core/question.ts'

/** Dominants of which keepers ask whether a bird has one copy or two. */
const debated: ReadonlySet<LocusId> = new Set(['B', 'R', 'P', 'O', 'Mb', 'Cr', 'F', 'Na', 'Pti', 'S', 'K'])

/** All of these loci have the lack of the dominant as their wild type. */
type Trait = { readonly locus: LocusId; readonly lack: string }

const words = ({ words: said }: Reading): string => said.join(' ')

/** "is he pure", "one copy or two", "double barred?", "does he carry single comb", "so F/F?". */
const asksPurity = (reading: Reading): boolean =>
  reading.tokens.some(({ type, said }) => type === 'pure' || (type === 'gene' && said.includes('/'))) ||
  /\b(?:pure|homozygous|hetero?zygous|genotype|double|single (?:or|barr\w+|factor|dose|copy)|one or two|one copy|two copies|only (?:got |has |have )?one|(?:got|has|have|hes|shes|with|carry|carries|carrying) (?:only )?(?:1|2|one|two|both)(?: copies| copy| of them| genes?)?\b(?! (?:of|hens?|roos?|chicks?|eggs?|\w+s\b)))\b/u.test(
    words(reading),
  ) ||
  reading.tokens.some(({ type }) => type === 'carries' || type === 'split')

const blueShell = /\b(?:blue|green)\b.*\beggs?\b|\beggs?\b.*\b(?:blue|green)\b/u
const otherShell = /^(?:white|brown|tan|tinted|cream)$/u

/** The dominant that is spoken of, by itself or by the lack of it. */
function traitOf(reading: Reading): Trait | undefined {
  const spoken = traitsIn(
    reading.tokens.filter((token) => token.type === 'trait' || token.type === 'colour' || isShownBreed(token)),
  )
  const shell =
    blueShell.test(words(reading)) || reading.scene.goals.some((goal) => /^(?:blue|green)-eggs$/u.test(goal))
  const found = shell ? ['blue egg'] : spoken
  for (const id of found) {
    const { locus } = traits[id] ?? {}
    if (locus !== undefined && debated.has(locus)) return { locus, lack: loci[locus].wild }
  }
  return undefined
}

const smooth = /^(?:smooth|flat|straight|clean|bare|plain|normal)$/u
/** Short for a look: of these, what has the dominant and what lacks it. */
const short: Partial<Readonly<Record<LocusId, { readonly has: RegExp; readonly lacks: RegExp }>>> = {
  Na: { has: /^(?:naked|bare)$/u, lacks: /^feathered$/u },
  R: { has: /^rose$/u, lacks: /^singles?$/u },
  P: { has: /^pea$/u, lacks: /^singles?$/u },
  F: { has: /^curl(?:y|ies)$/u, lacks: /^$/u },
  Pti: { has: /^feathered$/u, lacks: /^$/u },
}

/** Do these words of chicks say that they lack the dominant? Undefined where they say nothing of it. */
function lacksIt(look: readonly Token[], not: boolean, { locus, lack }: Trait): boolean | undefined {
  const own = traitsIn(look).find((id) => traits[id]?.locus === locus)
  if (own !== undefined) return (traits[own]!.allele === lack) !== not
  if (locus === 'P' && traitsIn(look).includes('single comb')) return !not
  if (locus === 'O') {
    if (look.some(({ word }) => otherShell.test(word))) return !not
    return look.some(({ word }) => /^(?:blue|green)$/u.test(word)) ? not : undefined
  }
  if (look.some(({ word }) => short[locus]?.has.test(word))) return not
  if (look.some((token) => isClear(token) || smooth.test(token.word) || short[locus]?.lacks.test(token.word)))
    return !not
  return locus === 'B' && look.some(({ type }) => type === 'colour') ? !not : undefined
}

/** "2 of 5 daughters lay white eggs": true where they lay no blue ones. */
function lays({ tokens }: Reading, from: number): boolean | undefined {
  const start = tokens.findIndex(({ at }) => at === from)
  const end = tokens.findIndex(({ type }, i) => i > start && type === 'stop')
  const near = tokens.slice(start + 1, end < 0 ? start + 9 : Math.min(end, start + 9))
  const goal = near.find(({ type }) => type === 'goal')
  if (goal?.type !== 'goal' || !goal.goal.endsWith('-eggs')) return undefined
  return !/^(?:blue|green|olive)-/u.test(goal.goal)
}

function talliesOf(reading: Reading, trait: Trait): readonly Tally[] {
  const counted = chicksCounted(reading.tokens)
  const seen = counted.flatMap(({ count, of, sex, look, not, at }): readonly Tally[] => {
    const lacks = look.length > 0 ? lacksIt(look, not, trait) : trait.locus === 'O' ? lays(reading, at) : undefined
    if (lacks === undefined) return []
    const own = sex ? { sex } : {}
    const rest = of === undefined ? [] : [{ count: of - count, ...own, shows: !lacks }]
    return [{ count, ...own, shows: lacks }, ...rest].filter((tally) => tally.count > 0)
  })
  if (trait.locus === 'O' && isLaying(reading)) return layersCounted(reading)
  if (seen.length > 0) return withRest(seen, counted)
  const all = ofAll(reading, counted, trait)
  return all.length > 0 || !thrown(reading, trait) ? all : [{ count: 1, shows: true }]
}

/** The message without the chicks that are told of: who was put to whom. */
function parentsOf(reading: Reading, trait: Trait): Reading {
  const look = thrown(reading, trait)
  const { text, tokens } = reading
  const counted = chicksCounted(tokens).length > 0
  if (!counted && !look) return reading
  return readingOf(counted || !look ? withoutCounts(text, tokens) : `${text.slice(0, look.at)} ${text.slice(look.end)}`)
}

const throws = /^(?:threw|throws|throw|throwing|gave|gives|produced|produces)$/u

/** "he threw singles", "gives me some single combs": nobody counted, but there was one at least. The words of its look. */
function thrown({ tokens }: Reading, trait: Trait): Token | undefined {
  const at = tokens.findIndex(({ word }) => throws.test(word))
  if (at < 0 || tokens.slice(0, at).some(({ type, word }) => type === 'not' || word === 'if')) return undefined
  const after = tokens.slice(at + 1, at + 5).filter(({ type }) => type !== 'filler')
  const look = after.find(
    (token) => short[trait.locus]?.lacks.test(token.word) || token.type === 'trait' || token.type === 'colour',
  )
  return look && lacksIt([look], false, trait) === true ? look : undefined
}

/** "3 lay blue 2 lay white": daughters counted by their shells, blue ones and others. */
function layersCounted({ tokens }: Reading): readonly Tally[] {
  return tokens.flatMap((token, at): readonly Tally[] => {
    if (token.type !== 'number' || token.percent || token.value < 1 || token.value > 200) return []
    const next = tokens
      .slice(at + 1, at + 4)
      .find(({ type }) => type !== 'filler' && type !== 'hen' && type !== 'unknown')
    if (next?.type !== 'goal' || !next.goal.endsWith('-eggs') || !/^la(?:y|id)/u.test(next.word)) return []
    return [{ count: Math.round(token.value), sex: 'F', shows: !/^(?:blue|green|olive)-/u.test(next.goal) }]
  })
}
/** Blue layers and others out of one pair: that the blue parent is not pure is what they say. */
/** "out of 8 pullets 8 lay blue": daughters counted by what they lay. */
const isLaying = (reading: Reading): boolean => layersCounted(reading).length > 0
const isMixedLaying = (reading: Reading): boolean => {
  const shells = layersCounted(reading).map(({ shows }) => shows)
  return shells.includes(true) && shells.includes(false)
}

/** "10 chicks, 2 single combed": the others have it. */
function withRest(seen: readonly Tally[], counted: readonly Chicks[]): readonly Tally[] {
  const total = counted.find(({ look, of }) => look.length === 0 && of === undefined)
  const left = (total?.count ?? 0) - seen.reduce((sum, { count }) => sum + count, 0)
  return left > 0 && seen.every(({ shows }) => shows) ? [...seen, { count: left, shows: false }] : seen
}

/** "9 chicks, all barred". */
function ofAll(reading: Reading, counted: readonly Chicks[], trait: Trait): readonly Tally[] {
  const total = counted.find(({ look }) => look.length === 0)
  const all = saidOfAll(reading.tokens)
  const lacks = total && all ? lacksIt(all.look, all.not, trait) : undefined
  return total === undefined || lacks === undefined
    ? []
    : [{ count: total.count, ...(total.sex ? { sex: total.sex } : {}), shows: lacks }]
}

/** A single-combed bird lacks the pea comb as well as the rose comb; "plain hens" lack what is in question. */
const showsLack = (bird: Bird | undefined, sex: 'M' | 'F', { locus }: Trait, { tokens }: Reading): boolean =>
  (locus === 'P' && bird !== undefined && traitsIn(bird.saidOf.parts).includes('single comb')) ||
  tokens.some(
    (token, i) =>
      token.type === (sex === 'M' ? 'cock' : 'hen') &&
      bird?.ref.breed === undefined &&
      [tokens[i - 1], tokens[i - 2], tokens[i + 1]].some(
        (near) => near !== undefined && (isClear(near) || /^(?:smooth|regular|usual)$/u.test(near.word)),
      ),
  )

/** "my frizzle": called by what it shows, it may have one copy of it or two, whatever the usual one has. */
function asAsked({ ref }: Bird, { locus, lack }: Trait): BirdRef {
  const breed = ref.breed === undefined ? undefined : breedNamed(ref.breed)
  const gene = breed && genesOf(breed)[locus]
  if (breed?.type !== 'described' || gene?.kind !== 'genotype' || ref.genotype?.[locus]) return ref
  const dominant = gene.alleles.find((allele) => allele !== lack)
  return dominant === undefined ? ref : { ...ref, genotype: { ...ref.genotype, [locus]: [dominant] } }
}

const member = (bird: Bird | undefined, sex: 'M' | 'F', trait: Trait, reading: Reading): FlockBird => ({
  name: partName(sex),
  sex,
  ...(bird && Object.keys(bird.ref).length > 0 ? { bird: asAsked(bird, trait) } : {}),
  ...(showsLack(bird, sex, trait, reading) ? { shows: { [trait.lack]: true } } : {}),
})

const has = (bird: Bird | undefined, { locus, lack }: Trait): boolean =>
  bird !== undefined &&
  traitsIn(bird.saidOf.parts).some((id) => traits[id]?.locus === locus && traits[id].allele !== lack)

/** "one or two barring genes" counts no chicks. */
const isOfYoung = ({ tokens }: Reading): boolean =>
  tokens.some(({ type, word }) => type === 'chick' || type === 'kin' || throws.test(word)) ||
  chicksCounted(tokens).some(({ of }) => of !== undefined)

/** Whether a bird has one copy or two of a dominant, by its chicks. Without chicks that is a question of fact. */
export const readPurity: Reader = (reading): CarrierQuestion | undefined => {
  const concludes =
    /\b(?:safe to say|safe to assume|so (?:hes|shes|he is|she is|he must|its)|must be|guess(?:ing)? (?:hes|shes)|means (?:hes|shes))\b/u.test(
      words(reading),
    )
  if (!reading.asks && !reading.has('question', 'carry') && !concludes) return undefined
  if (!asksPurity(reading) && !isMixedLaying(reading)) return undefined
  const trait = traitOf(reading)
  if (!trait) return undefined
  const chicks = talliesOf(reading, trait)
  const parents = parentsOf(reading, trait)
  const { matings, birds } = parents.scene
  const [pair] = [...pairsIn(parents), ...(matings.length === 0 ? pairsIn(reading) : [])]
  if (chicks.length === 0 || (!pair && !isOfYoung(reading))) return undefined
  const lone = (sex: 'M' | 'F'): Bird | undefined =>
    [...matings.flatMap(({ sires, dams }) => [...sires, ...dams]), ...birds].find(
      (bird) => bird.sex === sex && bird.named,
    )
  const [sire, dam] = pair ? [pair.sire, pair.dam] : [lone('M'), lone('F')]
  const she = reading.words.some((word) => /^(?:she|shes)$/u.test(word))
  const isHen = she || (has(dam, trait) && !has(sire, trait) && loci[trait.locus].on !== 'Z')
  return {
    kind: 'carrier',
    of: isHen ? 'the hen' : 'the cock',
    allele: trait.lack,
    locus: trait.locus,
    flock: {
      birds: [member(sire, 'M', trait, reading), member(dam, 'F', trait, reading)],
      broods: [{ sire: 'the cock', dam: 'the hen', chicks }],
    },
    rivals: [],
    ...commonOf(reading, pair ? [pair.sire, pair.dam] : []),
  }
}
