// grammar/followUp.ts: a short message applied to the question before: the other way round, another line, another bird, "eggs?".
import { breedNamed, lineOf } from '../core/breeds.ts'
import { birdOf } from './bird.ts'
import type { Context } from './context.ts'
import { hatchAgain, hatchOfCross, linesAgain, moneyOf } from './followMoney.ts'
import { familyOf } from './variety.ts'
import { lineSought } from './words/lines.ts'
import { aspectsOf, commonOf, goalsOf, isSolid, numberBefore } from './read/common.ts'
import { isToldPair, pairsIn } from './read/pairs.ts'
import { shownAsked } from './read/shownAsked.ts'
import { partTaken } from './partTaken.ts'
import { isNamed, type Group } from './saying.ts'
import type { Bird } from './bird.ts'
import type { Reading } from './reading.ts'
import type { AskBackQuestion, Aspect, Assumed, BirdRef, CrossQuestion, Question } from '../core/question.ts'
import type { Sex } from '../core/vocabulary.ts'

type Mating = CrossQuestion['matings'][number]

/** The question that a follow-up is applied to: of a question back, its likeliest reading. */
export function baseOf(last: Question | undefined): Question | undefined {
  if (last?.kind !== 'ask-back') return last
  return last.options[0]?.question ?? last
}

const nameOf = (ref: BirdRef): string =>
  [
    ref.line,
    ref.breed ?? (ref.cross ? `${nameOf(ref.cross.sire)} x ${nameOf(ref.cross.dam)}` : (ref.asWritten ?? 'the bird')),
  ]
    .filter(Boolean)
    .join(' ')

const restated = ({ sire, dam }: Mating): Assumed => ({
  kind: 'context',
  restated: `${nameOf(sire)} on ${nameOf(dam)}`,
})

/** "why" and "more" were asked of the birds before; what else was asked holds for the new ones too. */
const lasting = ({ aspects }: CrossQuestion): readonly Aspect[] =>
  aspects.filter((aspect) => aspect !== 'why' && aspect !== 'more')

function crossAgain(
  base: CrossQuestion,
  matings: readonly Mating[],
  aspects: readonly Aspect[],
  reading: Reading,
): CrossQuestion {
  const common = commonOf(reading)
  const { shown: _, ...rest } = base
  return {
    ...rest,
    matings,
    aspects: [...new Set(aspects)],
    assumed: [...common.assumed, ...matings.slice(0, 2).map(restated)],
    manner:
      reading.manner.symbols || reading.manner.units !== 'both' ? { ...base.manner, ...reading.manner } : base.manner,
  }
}

// --- birds put in the place of others ---

const withBird = (mating: Mating, part: Sex, bird: BirdRef): Mating =>
  part === 'M' ? { ...mating, sire: bird } : { ...mating, dam: bird }
const inPlace = ({ sire, dam }: Mating, part: Sex): BirdRef => (part === 'M' ? sire : dam)

/** The new bird; bare colours are of the breed in whose place it comes. */
const newBird = (group: Group, part: Sex, mating: Mating): readonly BirdRef[] =>
  group.map(
    (said) =>
      birdOf(
        said,
        part,
        familyOf(inPlace(mating, part).breed ?? '') ?? familyOf(inPlace(mating, part === 'M' ? 'F' : 'M').breed ?? ''),
      ).ref,
  )

function replaced(base: CrossQuestion, group: Group, told: Sex | undefined, reading: Reading): CrossQuestion {
  const [first] = base.matings
  const part = partTaken(group, told, first!, reading.tokens)
  const matings = base.matings.flatMap((mating) =>
    newBird(group, part, mating).map((bird) => withBird(mating, part, withOld(bird, inPlace(mating, part)))),
  )
  const once = [...new Map(matings.map((mating) => [JSON.stringify(mating), mating])).values()]
  return crossAgain(base, once, [...lasting(base), ...aspectsOf(reading)], reading)
}

/** "same but heritage", "same but split": what is told is added to the bird that was there. */
const withOld = (bird: BirdRef, old: BirdRef): BirdRef => {
  if (bird.breed !== undefined || bird.cross !== undefined) return bird
  const genotype = { ...old.genotype, ...bird.genotype }
  return { ...old, ...bird, ...(Object.keys(genotype).length > 0 ? { genotype } : {}) }
}

// --- lines ---

const partTold = ({ words, tokens }: Reading): Sex | undefined => {
  if (tokens.some(({ type }) => type === 'cock') || words.some((word) => /^(?:he|hes|him|his)$/u.test(word))) return 'M'
  if (tokens.some(({ type }) => type === 'hen') || words.some((word) => /^(?:she|shes|her|hers)$/u.test(word)))
    return 'F'
  return undefined
}

function withLine(bird: BirdRef, line: keyof typeof lineSought): BirdRef | undefined {
  const breed = bird.breed === undefined ? undefined : breedNamed(bird.breed)
  const found = breed && lineSought[line].map((word) => lineOf(breed, word)).find((one) => one !== undefined)
  return found ? { ...bird, line: found.id } : undefined
}

/** The one part of which a line was told before: "production RIR over Rocks", "and the heritage line?". */
function partOfLine({ matings }: CrossQuestion): Sex | undefined {
  const [sires, dams] = [matings.some(({ sire }) => sire.line), matings.some(({ dam }) => dam.line)]
  return sires === dams ? undefined : sires ? 'M' : 'F'
}

/** A line without a bird: of the bird the pronoun points to, of the one whose line was told, else of every bird that has such a line. */
function lineChanged(base: CrossQuestion, reading: Reading): CrossQuestion | undefined {
  const token = reading.tokens.find(({ type }) => type === 'line')
  if (token?.type !== 'line' || reading.scene.birds.some((bird) => bird.ref.breed !== undefined)) return undefined
  const part = partTold(reading) ?? partOfLine(base)
  const matings = base.matings.map(({ sire, dam }) => ({
    sire: part === 'F' ? sire : (withLine(sire, token.line) ?? sire),
    dam: part === 'M' ? dam : (withLine(dam, token.line) ?? dam),
  }))
  return JSON.stringify(matings) === JSON.stringify(base.matings)
    ? undefined
    : crossAgain(base, matings, [...lasting(base), ...aspectsOf(reading)], reading)
}

// --- generations ---

const bredTogether = ({ sire, dam }: Mating): Mating => ({
  sire: { cross: { sire, dam } },
  dam: { cross: { sire, dam } },
})
const backTo = (part: Sex, { sire, dam }: Mating): Mating =>
  part === 'M' ? { sire, dam: { cross: { sire, dam } } } : { sire: { cross: { sire, dam } }, dam }

/** "if I cross two of those chicks", "breed the kids". */
const crossesChicks =
  /\b(?:cross|breed|mate|put|pair)(?:ing|ed)? (?:up )?(?:(?:two|2|some|any|a pair|a couple|one|both|back) (?:of )?)?(?:those|them|these|the|their)(?: two)? ?(?:chicks?|babies|kids|offspring|young|youngsters|f1s?|together|progeny|pullets and cockerels)?(?: |$)/u

/** "if I keep one of the sons for my next rooster": he goes on the same hens, a daughter to the same cock. */
const keepsYoung =
  /\b(?:keep|kept|use|save|saved|hold back|held back|raise|pick)(?: \w+){0,3} (sons?|boys?|cockerels?|roos?|daughters?|pullets?|girls?)\b.*\b(?:next|breeders?|breeding|rooster|roo|cock|father|flock|hens|again|back)\b/u

function nextGeneration(base: CrossQuestion, reading: Reading): CrossQuestion | undefined {
  const generation = reading.tokens.some(({ type }) => type === 'generation')
  const words = reading.words.join(' ')
  const back = /\bback\b/u.test(words)
  const parent = back && reading.tokens.some((token) => (token.type === 'cock' || token.type === 'hen') && token.parent)
  const kept = keepsYoung.exec(words)?.[1]
  if (kept !== undefined && !back) {
    const son = /^(?:son|boy|cock|roo)/u.test(kept)
    const on = base.matings.slice(0, 2).map((mating) => backTo(son ? 'F' : 'M', mating))
    return crossAgain(base, on, aspectsOf(reading), reading)
  }
  if (!reading.has('nextGeneration') && !generation && !parent && !crossesChicks.test(words)) return undefined
  const mother = /\b(?:mother|mum|mom|dam|hen)\b/u.test(words)
  const matings = base.matings
    .slice(0, 2)
    .map((mating) => (back ? backTo(mother ? 'F' : 'M', mating) : bredTogether(mating)))
  return crossAgain(base, matings, aspectsOf(reading), reading)
}

// --- what was told of a bird of the cross ---

/** "no, the roo is the Sussex": the birds change places, or a new one comes in. */
function corrected(base: CrossQuestion, reading: Reading): CrossQuestion | undefined {
  const [mating] = base.matings
  for (const { who, is } of reading.scene.told) {
    const part = who.sex
    const [first] = is
    // "the RIR is the rooster": which bird is told first, its part behind
    const bird = who.ref.breed !== undefined && first && !first.named ? who : first
    if (!mating || part === undefined || !bird) continue
    const said = bird.ref
    const old = inPlace(mating, part)
    const other = inPlace(mating, part === 'M' ? 'F' : 'M')
    if (bird.saidOf.split || bird.saidOf.carried.length > 0 || (said.breed === undefined && said.genotype)) {
      const genotype = said.genotype ?? splitLike(other)
      return crossAgain(
        base,
        base.matings.map((one) =>
          withBird(one, part, { ...inPlace(one, part), genotype: { ...inPlace(one, part).genotype, ...genotype } }),
        ),
        lasting(base),
        reading,
      )
    }
    if (said.breed === undefined) continue
    const isOther = isSameBird(
      said,
      other,
      bird.saidOf.parts.some(({ type }) => type === 'family'),
    )
    if (isOther && !isSameBird(said, old, false))
      return crossAgain(
        base,
        base.matings.map(({ sire, dam }) => ({ sire: dam, dam: sire })),
        lasting(base),
        reading,
      )
    return crossAgain(
      base,
      [withBird(mating, part, newBird([bird.saidOf], part, mating)[0] ?? said)],
      lasting(base),
      reading,
    )
  }
  return undefined
}
const isSameBird = (said: BirdRef, bird: BirdRef, family: boolean): boolean =>
  said.breed === bird.breed ||
  (family && familyOf(said.breed ?? '') === familyOf(bird.breed ?? '') && said.breed !== undefined) ||
  ((said.breed ?? '').endsWith(' bird') &&
    (bird.breed ?? '').toLowerCase().includes((said.breed ?? '').toLowerCase().replace(' bird', '')))
/** "split too": to what the other bird shows. */
const splitLike = ({ breed, genotype }: BirdRef): BirdRef['genotype'] => {
  if (/Lavender/u.test(breed ?? '') || genotype?.['lav']) return { lav: ['Lav+', 'lav'] }
  if (/Chocolate/u.test(breed ?? '') || genotype?.['choc']) return { choc: ['Choc+', 'choc'] }
  if (/White/u.test(breed ?? '')) return { c: ['C+', 'c'] }
  return undefined
}

// --- the rest ---

/** "how sure", "why", "more", "in plain words", "eggs?". */
function askedAgain(base: CrossQuestion, reading: Reading): CrossQuestion | undefined {
  const shown = shownAsked([], reading)
  if (shown.length > 0 && !reading.has('plain', 'sure'))
    return { ...crossAgain(base, base.matings, aspectsOf(reading), reading), shown }
  const aspects = aspectsOf(reading)
  if (reading.has('plain'))
    return { ...crossAgain(base, base.matings, aspects, reading), manner: { ...base.manner, symbols: false } }
  if (reading.has('sure')) return crossAgain(base, base.matings, ['sexing', ...aspects], reading)
  if (aspects.includes('symbols'))
    return { ...crossAgain(base, base.matings, aspects, reading), manner: { ...base.manner, symbols: true } }
  if (aspects.length > 0 || reading.words.includes('more'))
    return crossAgain(base, base.matings, aspects.length > 0 ? aspects : ['more'], reading)
  if (!areChicksAsked(reading.scene.birds, reading)) return undefined
  return crossAgain(base, base.matings, asksSexOf(reading) ? ['sexing'] : ['shares'], reading)
}

const reversed = (base: CrossQuestion, reading: Reading): CrossQuestion | undefined =>
  reading.scene.aspects.includes('reverse')
    ? crossAgain(
        base,
        base.matings.map(({ sire, dam }) => ({ sire: dam, dam: sire })),
        [...lasting(base), ...aspectsOf(reading)].filter((aspect) => aspect !== 'reverse'),
        reading,
      )
    : undefined

function changed(base: CrossQuestion, reading: Reading): CrossQuestion | undefined {
  const [change] = reading.scene.changes
  const group = change?.birds ?? []
  const told = change?.part ?? partOnlyTold(reading) ?? partPointedTo(reading)
  if (change && group.some(isNamed)) return replaced(base, group, told, reading)
  const birds = reading.scene.birds.filter(
    (bird) =>
      !isDenied(bird, reading) &&
      (isSolid(bird) || (bird.named && bird.saidOf.parts.some(({ type }) => type === 'colour'))),
  )
  if (areChicksAsked(birds, reading)) return undefined
  if (birds.length === 0 || birds.length > 3 || reading.words.length > 9) return undefined
  return replaced(
    base,
    birds.map(({ saidOf }) => saidOf),
    birds[0]!.sex ?? told,
    reading,
  )
}
/** "hes a New Hampshire not RIR". */
const isDenied = ({ saidOf }: Bird, { tokens }: Reading): boolean =>
  tokens.findLast(({ at, type }) => at < saidOf.at && type !== 'filler')?.type === 'not'

/** "so the red ones are girls": the colour tells the sex. */
const asksSexOf = ({ words }: Reading): boolean =>
  /\bones? (?:(?:are|r|is|be|all|the|always) )*(?:girls?|boys?|hens?|pullets?|cockerels?|roos?|males?|females?)\b/u.test(
    words.join(' '),
  )

/** "will there be any lavenders", "do I get blue ones": chicks of that colour, and no other parent. */
const areChicksAsked = (birds: readonly Bird[], reading: Reading): boolean =>
  asksSexOf(reading) || areColoursAsked(birds, reading)
const areColoursAsked = (birds: readonly Bird[], { words, scene }: Reading): boolean =>
  scene.changes.length === 0 &&
  birds.length > 0 &&
  birds.every(
    ({ sex, saidOf }) => sex === undefined && saidOf.parts.every(({ type }) => type === 'colour' || type === 'number'),
  ) &&
  /\b(?:any|will|would|be|get|come|all|hatch|some|none|how many|many)\b/u.test(words.join(' '))

/** "with Sussex hens instead": a part named beside the change. */
const partOnlyTold = ({ words }: Reading): Sex | undefined =>
  words.includes('over') || words.includes('under') ? (words.includes('under') ? 'M' : 'F') : undefined

/** "what if hes split": the cock. */
const partPointedTo = ({ words }: Reading): Sex | undefined =>
  words.some((word) => /^(?:he|hes|him)$/u.test(word))
    ? 'M'
    : words.some((word) => /^(?:she|shes)$/u.test(word))
      ? 'F'
      : undefined

/** "which hens would be better": another mate for the bird that is kept. */
function mateSought(base: CrossQuestion, reading: Reading): Question | undefined {
  const sought = reading.scene.wanted.find(
    ({ firm, sex, for: birds }) => firm && sex !== undefined && birds.length === 0,
  )
  const [mating] = base.matings
  if (
    !sought?.sex ||
    !mating ||
    reading.scene.birds.some(isSolid) ||
    reading.scene.aspects.some((aspect) => aspect === 'chicks' || aspect === 'adults') ||
    reading.words.some((word) => /^(?:lay|lays|look|weigh)$/u.test(word)) // what the daughters do; no mate is sought
  )
    return undefined
  const goals = goalsOf(reading)
  return {
    kind: 'partners',
    for: [sought.sex === 'F' ? mating.sire : mating.dam],
    wanted: sought.sex,
    goals: goals.length > 0 ? goals : base.aspects.includes('sexing') ? ['sexable'] : [],
    among: [],
    ...commonOf(reading, [], [restated(mating)]),
  }
}

function onCross(base: CrossQuestion, reading: Reading, context: Context): Question | undefined {
  return (
    hatchOfCross(base, reading, context) ??
    moneyOf(
      base.matings.map((cross) => ({ cross })),
      base,
      reading,
    ) ??
    mateSought(base, reading) ??
    corrected(base, reading) ??
    nextGeneration(base, reading) ??
    lineChanged(base, reading) ??
    changed(base, reading) ??
    reversed(base, reading) ??
    askedAgain(base, reading)
  )
}

function onOthers(base: Question, reading: Reading, context: Context): Question | undefined {
  const goals = goalsOf(reading)
  const birds = reading.scene.birds.filter(isSolid)
  switch (base.kind) {
    case 'partners': {
      const about = reading.scene.changes
        .filter(({ how }) => how === 'about')
        .flatMap(({ birds: group }) => group.map((said) => birdOf(said)))
        .filter((bird) => isSolid(bird) && (bird.sex === undefined || bird.sex === base.wanted))
      if (birds.length === 0 && about.length > 0 && base.for.length > 0) return matesOffered(about, base, reading)
      if (birds.length > 0 && offersMates(birds, base, reading)) return matesOffered(birds, base, reading)
      if (birds.length > 0)
        return {
          ...base,
          for: birds.map(({ ref }) => ref),
          ...(birds[0]?.sex ? { wanted: birds[0].sex === 'M' ? 'F' : 'M' } : {}),
          ...(goals.length > 0 ? { goals } : {}),
        }
      return goals.length > 0 ? { ...base, goals } : undefined
    }
    case 'hatch':
      return hatchAgain(base, reading, context)
    case 'lines':
      return linesAgain(base, reading)
    case 'carrier':
      return moreChicks(base, reading)
    case 'parents':
      return birds.length > 0
        ? {
            ...base,
            sires: birds.filter(({ sex }) => sex !== 'F').map(({ ref }) => ref),
            dams: birds.some(({ sex }) => sex === 'F')
              ? birds.filter(({ sex }) => sex === 'F').map(({ ref }) => ref)
              : base.dams,
          }
        : undefined
    case 'fact':
      if (base.topic === 'bird' && birds.length === 0 && !base.mating) {
        const money = moneyOf(base.birds, base, reading)
        if (money) return money
      }
      return reading.scene.aspects.some((aspect) => aspect === 'why' || aspect === 'more') ||
        reading.has('plain', 'sure')
        ? base
        : undefined
    default:
      return undefined
  }
}

type Partners = Extract<Question, { kind: 'partners' }>
/** "i have light sussex, would that do?": birds of the sex that was sought, for the ones told before. */
function offersMates(birds: readonly Bird[], base: Partners, { words, tokens }: Reading): boolean {
  const has = words.some((word) => /^(?:have|got|ive|only|do|work|ok|okay|good|use|those|enough|instead)$/u.test(word))
  return (
    base.for.length > 0 &&
    birds.every(({ sex }) => sex === base.wanted || (sex === undefined && has)) &&
    !tokens.some(({ type }) => type === 'forWhom')
  )
}
function matesOffered(birds: readonly Bird[], base: Partners, reading: Reading): Question {
  const aspects = aspectsOf(reading)
  const sought = base.goals.includes('sexable') ? (['sexing'] as const) : []
  const matings = base.for.flatMap((own) =>
    birds.map(({ ref }): Mating => (base.wanted === 'F' ? { sire: own, dam: ref } : { sire: ref, dam: own })),
  )
  return {
    kind: 'cross',
    matings: matings.slice(0, 12),
    aspects: [...new Set([...sought, ...aspects])],
    ...commonOf(reading, birds, matings.slice(0, 2).map(restated)),
  }
}

/** "and 5 more, all black": added to the brood; "now its 9": all of them so far. */
function moreChicks(base: Extract<Question, { kind: 'carrier' }>, reading: Reading): Question | undefined {
  const count = numberBefore(
    reading,
    ({ type, word }) => type === 'chick' || type === 'colour' || word === 'more' || word === 'other',
    3,
  )
  const [brood] = base.flock.broods
  if (count === undefined) return undefined
  const shows = reading.tokens.some(
    (token) => token.type === 'colour' && base.allele.toLowerCase().startsWith(token.colour.slice(0, 3)),
  )
  const sire = brood?.sire ?? 'the cock'
  const dam = brood?.dam ?? 'the hen'
  const before = brood?.chicks ?? []
  const total =
    reading.words.some((word) => /^(?:now|total|altogether|all|far)$/u.test(word)) && !reading.words.includes('more')
  const kept = total ? before.filter((told) => told.shows !== shows) : before
  const chicks = [...kept, { count: Math.round(count), shows }]
  return { ...base, flock: { ...base.flock, broods: [{ sire, dam, chicks }, ...base.flock.broods.slice(1)] } }
}

/** The bird that was asked for, put to the one that was told. */
function completed(last: AskBackQuestion, reading: Reading): Question | undefined {
  const bare = last.missing === 'variety' && last.options.every(({ question }) => question.kind === 'fact')
  if (last.missing !== 'other-bird' && last.missing !== 'birds' && !bare) return undefined
  const known = last.birds[0] ?? last.sire?.[0] ?? last.dam?.[0]
  const bird = reading.scene.birds.find(isSolid)
  if (!known || !bird) return undefined
  const parted = last.sire?.includes(known) ? 'F' : last.dam?.includes(known) ? 'M' : undefined
  const sex = bird.sex ?? parted ?? (/\b(?:roo|rooster|cock|cockerel)\b/iu.test(known.asWritten ?? '') ? 'F' : 'M')
  const mating: Mating = sex === 'M' ? { sire: bird.ref, dam: known } : { sire: known, dam: bird.ref }
  return {
    kind: 'cross',
    matings: [mating],
    aspects: aspectsOf(reading),
    ...commonOf(reading, [bird], [restated(mating)]),
  }
}

/** "then breed the daughters to a Welsummer": the young of the cross before, put to another bird. */
function youngMated(base: Question | undefined, reading: Reading): CrossQuestion | undefined {
  const [mating] = base?.kind === 'cross' ? base.matings : []
  const [pair, ...others] = reading.scene.matings
  const [sire] = pair?.sires ?? []
  const [dam] = pair?.dams ?? []
  if (base?.kind !== 'cross' || !mating || !sire || !dam || others.length > 0) return undefined
  const isYoung = ({ named, ref, saidOf }: typeof sire): boolean =>
    !named && !ref.cross && saidOf.parts.some((part) => part.type === 'kin' && /daughter|son/u.test(part.kin))
  const [youngSire, youngDam] = [isYoung(sire), isYoung(dam)]
  const mate = youngSire ? dam : sire
  if (youngSire === youngDam || !isSolid(mate)) return undefined
  const young: BirdRef = { cross: mating }
  const next = youngSire ? { sire: young, dam: mate.ref } : { sire: mate.ref, dam: young }
  return crossAgain(base, [next], [...lasting(base), ...aspectsOf(reading)], reading)
}

/** "and Sussex on the gold laced": breeds whose colour was told before, the other way about or with another. */
function ofSameBirds(base: Question | undefined, reading: Reading): CrossQuestion | undefined {
  const pairs = pairsIn(reading)
  if (base?.kind !== 'cross' || pairs.length !== 1 || !isToldPair(reading)) return undefined
  const known = base.matings.flatMap(({ sire, dam }) => [sire, dam])
  const [{ sire, dam, by }] = pairs as readonly [(typeof pairs)[number]]
  const open = [sire, dam].filter(({ others }) => others.length > 0 || isBare(sire) || isBare(dam))
  const before = (bird: Bird): BirdRef | undefined =>
    isBare(bird) ? known.find(({ breed }) => familyOf(breed ?? '') === familyOf(bird.ref.breed ?? '')) : undefined
  if (by === 'nothing' || open.length === 0 || (!before(sire) && !before(dam))) return undefined
  const matings = [{ sire: before(sire) ?? sire.ref, dam: before(dam) ?? dam.ref }]
  return crossAgain(base, matings, [...lasting(base), ...aspectsOf(reading)], reading)
}
/** A breed word without a colour. */
const isBare = ({ saidOf, ref }: Bird): boolean =>
  ref.breed !== undefined &&
  saidOf.parts.some(({ type }) => type === 'family') &&
  !saidOf.parts.some(({ type }) => type === 'colour')

/** A message that stands by itself is no follow-up. */
function standsAlone(reading: Reading): boolean {
  const { scene } = reading
  if (isToldPair(reading) || pairsIn(reading).some(({ by }) => by === 'sex')) return scene.changes.length === 0
  if (scene.wanted.some(({ firm, for: birds }) => firm && birds.length > 0)) return true
  const hearsay =
    reading.has('claim') &&
    reading.tokens.some(({ type }) => type === 'carries' || type === 'split') &&
    pronounless(reading)
  return hearsay || reading.words.length > 24
}

/** "my friend says hens can be split": no bird that was spoken of is meant. */
const pronounless = ({ words }: Reading): boolean =>
  !words.some((word) => /^(?:he|she|they|him|her|them|these|those|it|his|their|hes|shes|theyre)$/u.test(word))

/** Short enough to lean on what was said, and with something in it that does. */
export function followUp(context: Context, reading: Reading): Question | undefined {
  const { last } = context
  if (!last || last.kind === 'silent' || last.kind === 'error' || last.kind === 'decline') return undefined
  const young = youngMated(baseOf(last), reading) ?? ofSameBirds(baseOf(last), reading)
  if (young) return young
  if (standsAlone(reading)) return undefined
  if (last.kind === 'ask-back') {
    const complete = completed(last, reading)
    if (complete) return complete
  }
  const base = baseOf(last)
  if (!base) return undefined
  return base.kind === 'cross' ? onCross(base, reading, context) : onOthers(base, reading, context)
}
