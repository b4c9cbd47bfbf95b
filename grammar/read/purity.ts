// grammar/read/purity.ts: "is he pure for rose comb": what stands in place of a dominant is what a bird may carry unseen.
import { loci, type LocusId } from '../../core/data/loci.ts'
import { traitsIn } from '../bird.ts'
import { traits } from '../words/traits.ts'
import { chicksCounted, isClear, saidOfAll, type Chicks } from './chicks.ts'
import { commonOf, type Reader } from './common.ts'
import { pairsIn } from './pairs.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Token } from '../token.ts'
import type { CarrierQuestion, FlockBird, Tally } from '../../core/question.ts'

/** Dominants of which keepers ask whether a bird has one copy or two. */
const debated: ReadonlySet<LocusId> = new Set(['B', 'R', 'P', 'O', 'Mb', 'Cr', 'F', 'Na', 'Pti', 'S', 'K'])

/** All of these loci have the lack of the dominant as their wild type. */
type Trait = { readonly locus: LocusId; readonly lack: string }

const words = ({ words: said }: Reading): string => said.join(' ')

/** "is he pure", "one copy or two", "double barred?", "does he carry single comb". */
const asksPurity = (reading: Reading): boolean =>
  reading.tokens.some(({ type }) => type === 'pure') ||
  /\b(?:pure|homozygous|hetero?zygous|double|single or|one or two|one copy|two copies|only (?:got |has |have )?one|(?:got|has|have|hes|shes|with|carry|carries|carrying) (?:only )?(?:1|2|one|two|both)(?: copies| copy| of them| genes?)?\b(?! (?:of|hens?|roos?|chicks?|eggs?|\w+s\b)))\b/u.test(
    words(reading),
  ) ||
  reading.tokens.some(({ type }) => type === 'carries' || type === 'split')

const blueShell = /\b(?:blue|green)\b.*\beggs?\b|\beggs?\b.*\b(?:blue|green)\b/u
const otherShell = /^(?:white|brown|tan|tinted|cream)$/u

/** The dominant that is spoken of, by itself or by the lack of it. */
function traitOf(reading: Reading): Trait | undefined {
  const spoken = traitsIn(reading.tokens.filter(({ type }) => type === 'trait' || type === 'colour'))
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

/** Do these words of chicks say that they lack the dominant? Undefined where they say nothing of it. */
function lacksIt(look: readonly Token[], not: boolean, { locus, lack }: Trait): boolean | undefined {
  const own = traitsIn(look).find((id) => traits[id]?.locus === locus)
  if (own !== undefined) return (traits[own]!.allele === lack) !== not
  if (locus === 'O') {
    if (look.some(({ word }) => otherShell.test(word))) return !not
    return look.some(({ word }) => /^(?:blue|green)$/u.test(word)) ? not : undefined
  }
  if (look.some((token) => isClear(token) || smooth.test(token.word))) return !not
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
  return seen.length > 0 ? withRest(seen, counted) : ofAll(reading, counted, trait)
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

/** A single-combed bird lacks the pea comb as well as the rose comb. */
const showsLack = (bird: Bird | undefined, { locus }: Trait): boolean =>
  locus === 'P' && bird !== undefined && traitsIn(bird.saidOf.parts).includes('single comb')

const member = (bird: Bird | undefined, name: string, sex: 'M' | 'F', trait: Trait): FlockBird => ({
  name,
  sex,
  ...(bird && Object.keys(bird.ref).length > 0 ? { bird: bird.ref } : {}),
  ...(showsLack(bird, trait) ? { shows: { [trait.lack]: true } } : {}),
})

const has = (bird: Bird | undefined, { locus, lack }: Trait): boolean =>
  bird !== undefined &&
  traitsIn(bird.saidOf.parts).some((id) => traits[id]?.locus === locus && traits[id].allele !== lack)

/** "one or two barring genes" counts no chicks. */
const isOfYoung = ({ tokens }: Reading): boolean =>
  tokens.some(({ type }) => type === 'chick' || type === 'kin') ||
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
  const [pair] = pairsIn(reading)
  if (chicks.length === 0 || (!pair && !isOfYoung(reading))) return undefined
  const lone = (sex: 'M' | 'F'): Bird | undefined => reading.scene.birds.find((bird) => bird.sex === sex && bird.named)
  const [sire, dam] = pair ? [pair.sire, pair.dam] : [lone('M'), lone('F')]
  const she = reading.words.some((word) => /^(?:she|shes)$/u.test(word))
  const isHen = she || (has(dam, trait) && !has(sire, trait) && loci[trait.locus].on !== 'Z')
  return {
    kind: 'carrier',
    of: isHen ? 'the hen' : 'the cock',
    allele: trait.lack,
    locus: trait.locus,
    flock: {
      birds: [member(sire, 'the cock', 'M', trait), member(dam, 'the hen', 'F', trait)],
      broods: [{ sire: 'the cock', dam: 'the hen', chicks }],
    },
    rivals: [],
    ...commonOf(reading, pair ? [pair.sire, pair.dam] : []),
  }
}
