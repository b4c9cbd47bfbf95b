// grammar/read/partners.ts: which hens for my cock, which cock for my hens, and to what end.
import { breedNamed } from '../../core/breeds.ts'
import { commonOf, goalsOf, isHybrid, isProduct, isSolid, refsOf, type Reader } from './common.ts'
import { crossOf } from './crossOf.ts'
import { isToldPair, type Pair } from './pairs.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Token } from '../token.ts'
import type { Goal, PartnersQuestion, Question } from '../../core/question.ts'
import type { Sex } from '../../core/vocabulary.ts'

const opposite = (sex: Sex): Sex => (sex === 'M' ? 'F' : 'M')

/** The keeper's own birds, and the sex that is looked for. */
type Sought = { readonly own: readonly Bird[]; readonly wanted: Sex; readonly among: readonly Bird[] }

function soughtIn(reading: Reading): Sought | undefined {
  const { scene } = reading
  const isTold = isToldPair(reading)
  const all = scene.wanted.filter((one) => !(isTold && one.colours && one.for.length === 0)) // "still get choc girls": chicks
  const seeking = all.find(({ firm }) => firm) ?? all[0]
  const father = isTold ? undefined : fatherFor(reading)
  if (father) return father
  if (!seeking || isWhatHeShouldBe(reading))
    return isTold
      ? undefined
      : (whatHeShouldBe(reading) ?? bestFor(reading) ?? forWishes(reading) ?? oneCockFor(reading))
  const mated = scene.matings.flatMap((mating) => {
    const both = [...mating.sires, ...mating.dams]
    return seeking.sex !== undefined && mating.by !== 'sex' && both.every(isSeveral)
      ? both.map((bird) => ({ ...bird, sex: opposite(seeking.sex!) }))
      : both
  })
  const birds = [...seeking.for, ...scene.birds.filter((bird) => !seeking.for.includes(bird)), ...mated].filter(
    (bird, _, all) => isSolid(bird) && !isMeatBird(bird) && !(isProduct(bird) && all.some((other) => !isHybrid(other))),
  )
  const under = birds.filter((bird) => isUnder(bird, reading))
  if (seeking.sex !== 'M' && under.length > 0 && birds.length > under.length)
    return { own: once(under), wanted: 'F', among: once(birds.filter((bird) => !under.includes(bird))) }
  const sex = seeking.sex ?? sexCalled(reading) ?? sexWanted(seeking.for, birds)
  if (sex === undefined) return undefined
  const offered = offeredIn(birds, reading)
  const isOffered = ({ saidOf }: Bird): boolean => offered.some((one) => one.saidOf.at === saidOf.at)
  const other = birds.filter((bird) => bird.sex === opposite(sex) && !isOffered(bird))
  const open = birds.filter((bird) => bird.sex === undefined && !isOffered(bird))
  const later = open.filter((bird) => bird.saidOf.at > seeking.at)
  const own = withoutBareAgain(
    once(
      other.length > 0 && seeking.for.every((bird) => bird.sex !== undefined)
        ? [...other, ...open.filter((bird) => !later.includes(bird))]
        : [...other, ...open],
    ),
  )
  const among = once([
    ...birds.filter((bird) => bird.sex === sex),
    ...offered,
    ...(own.some((bird) => bird.sex === undefined) ? [] : open),
  ])
  if (own.length > 0 && !seeking.firm) return isTold ? undefined : weakly(own, sex)
  return own.length > 0 ? { own, wanted: sex, among } : undefined
}

/** "which roo is better over Barred Rocks, Australorp or RIR": the two with "or" between them, behind the others. */
function offeredIn(all: readonly Bird[], { tokens }: Reading): readonly Bird[] {
  const birds = [...new Map(all.map((bird) => [bird.saidOf.at, bird])).values()].filter(
    ({ saidOf }) => !saidOf.parts.some(({ type }) => type === 'cock' || type === 'hen'),
  )
  const either = birds.findIndex(({ saidOf }, at) => {
    const next = birds[at + 1]
    const between = tokens.filter((token) => next !== undefined && token.at >= saidOf.end && token.at < next.saidOf.at)
    return (
      at > 0 &&
      between.length > 0 &&
      between.every(({ type }) => type === 'or' || type === 'filler') &&
      between.some(({ type }) => type === 'or')
    )
  })
  return either < 0 ? [] : birds.slice(either, either + 2)
}

/** "hens for an Ixworth cock to make a meat bird": what is to come of it. */
const isMeatBird = ({ ref, said, sex }: Bird): boolean =>
  ref.breed === 'Cornish Cross' && sex === undefined && /\b(?:meat|table|broilers?|roasters?)\b/iu.test(said)

const shouldBe =
  /\b(?:what|which|who|whats)(?: breed| kind| sort| colou?r)? (?:should|ought|must|would|could) (he|she|the (?:roo|rooster|cock|cockerel|male|boy|dad|sire)|the (?:hens?|girls|pullets|females|wives)|they|the (?:other|mate))(?: to)? be\b/u
const isWhatHeShouldBe = ({ words }: Reading): boolean => shouldBe.test(words.join(' '))
/** "a dozen Barred Rocks. What should he be?": the mate of birds of which there are several. */
function whatHeShouldBe({ scene, words }: Reading): Sought | undefined {
  const who = shouldBe.exec(words.join(' '))?.[1]
  const own = scene.birds.filter((bird) => isSolid(bird) && !isProduct(bird))
  if (who === undefined || own.length === 0) return undefined
  const wanted: Sex = /^(?:she|the (?:hens?|girls|pullets|females|wives))$/u.test(who) ? 'F' : 'M'
  const mates = own.filter((bird) => bird.sex !== wanted)
  return mates.length > 0 ? { own: mates, wanted, among: [] } : undefined
}

/** "which of my hens (BR, RIR) are sexable under my Welsummer": he is the cock. */
const isUnder = ({ saidOf }: Bird, { tokens }: Reading): boolean =>
  tokens.findLast(
    ({ at, type }) =>
      at < saidOf.end - 1 &&
      at !== saidOf.at &&
      !['filler', 'my', 'their', 'breed', 'family', 'colour', 'cock'].includes(type),
  )?.type === 'under'

/** "4 Light Brahmas + 3 Wyandottes": a count of birds, and no pair. */
const isSeveral = ({ saidOf }: Bird): boolean => saidOf.parts.some((part) => part.type === 'number' && part.value > 1)

/** "best cross for sexing if I have barred hens": the mate is sought, though no sex is. */
function bestFor({ scene, has }: Reading): Sought | undefined {
  const own = scene.birds.filter(isSolid)
  const [sex, ...others] = [...new Set(own.map((bird) => bird.sex))]
  const goals = scene.goals.length > 0 || scene.aspects.includes('sexing')
  return has('bestBreed') && goals && sex !== undefined && others.length === 0
    ? { own, wanted: opposite(sex), among: [] }
    : undefined
}

/** "Brown Leghorn cock. want chicks I can sex, white eggs": a bird alone, and wishes of its young. */
function forWishes({ scene, tokens, has }: Reading): Sought | undefined {
  const [only, ...others] = scene.birds.filter((bird) => isSolid(bird) && !isProduct(bird))
  const wishes = scene.goals.length > 0 || scene.aspects.includes('sexing')
  const wants = tokens.some(
    (token, at) =>
      token.type === 'want' &&
      /^(?:want|wanting|need|after|looking for)$/u.test(token.word) &&
      !/^to$/u.test(tokens[at + 1]?.word ?? ''),
  )
  const young = tokens.some(
    ({ type, word }) =>
      type === 'chick' || type === 'under' || type === 'over' || /^(?:daughters|pullets|layers)$/u.test(word),
  )
  return only?.sex !== undefined &&
    others.length === 0 &&
    scene.matings.length === 0 &&
    wishes &&
    wants &&
    young &&
    !has('photo', 'father', 'carry', 'hatch')
    ? { own: [only], wanted: opposite(only.sex), among: [] }
    : undefined
}

/** "good temper", "blue eggs": behind "with", what the mate is to have. */
const isWish = (tokens: readonly Token[], at: number): boolean => {
  const rest = tokens.slice(at, at + 4)
  return (
    rest.some(({ type }) => type === 'aspect' || type === 'goal') &&
    rest.every(({ type }) => type !== 'breed' && type !== 'family')
  )
}

/** "3 Barred Rocks, 2 Delawares. one rooster for all?", "Jersey Giant hens. sire?": birds of his own, and a lone word for the mate. */
function oneCockFor({ scene, tokens, words, has }: Reading): Sought | undefined {
  const own = scene.birds.filter((bird) => isSolid(bird) && !isProduct(bird))
  const [sex, ...others] = [...new Set(own.flatMap((bird) => bird.sex ?? []))]
  if (own.length === 0 || others.length > 0 || has('father', 'carry', 'photo')) return undefined
  const wanted = opposite(sex ?? 'F')
  const isMate = (token: Token | undefined): boolean => token?.type === (wanted === 'M' ? 'cock' : 'hen')
  const lone = tokens.some((token, i) => {
    const [before, after] = [tokens[i - 1], tokens[i + 1]]
    const stands = before === undefined || before.type === 'stop' || before.type === 'comma'
    const sought =
      after?.type === 'stop'
        ? after.asks
        : /^(?:that|who|to|which)$/u.test(after?.word ?? '') ||
          (after?.type === 'over' && /^(?:w|with)$/u.test(after.word) && isWish(tokens, i + 2)) || // "hens w good temper"
          /^(?:recommend\w*|suggest\w*|ideas?|options?|recs?|wanted|needed|advice|choices?)(?: for)?$/u.test(
            after?.word ?? '',
          )
    return isMate(token) && stands && sought
  })
  const lacking = tokens.some((token, i) => token.type === 'not' && isMate(tokens[i + 1])) // "and no rooster"
  const one = tokens.some((token, i) => token.type === 'number' && token.value === 1 && isMate(tokens[i + 1]))
  const forAll = // "one roo for the lot"
    own.length > 1 &&
    tokens.some(
      (token, i) =>
        isMate(token) &&
        /^(?:one|a|1|single)$/u.test(tokens[i - 1]?.word ?? '') &&
        /^(?:for|over|on|to cover|to do) (?:the )?(?:lot|all|both|everyone|everybody|whole)\b/u.test(
          tokens
            .slice(i + 1, i + 4)
            .map(({ word }) => word)
            .join(' '),
        ),
    )
  const whoOver = tokens.some(
    ({ word }, i) =>
      /^(?:who|what|which|whats best|whos best|best)$/u.test(word) &&
      tokens[i + 1]?.type === 'over' &&
      tokens.slice(i + 2, i + 5).some(({ at }) => own.some(({ saidOf }) => saidOf.at === at)),
  )
  const goals = scene.goals.length > 0 || scene.aspects.includes('sexing')
  const several = tokens.some((token, i) => token.type === 'number' && token.value > 1 && isMate(tokens[i + 1]))
  const sought = own.length > 1 || words.some((word) => /^(?:bought|buy|get|got|should|need)$/u.test(word))
  const wives = wanted === 'F' && several && own.length === 1 && scene.goals.length > 0 && scene.matings.length === 0
  return lone ||
    forAll ||
    (whoOver && wanted === 'M') ||
    (lacking && goals) ||
    wives ||
    (one && sought && goals && wanted === 'M')
    ? { own, wanted, among: [] }
    : undefined
}

/** "Columbian Rock hens. whos the daddy if I want sexlinks": who is to be, not who was. */
export function isFatherToBe({ tokens, scene, has }: Reading): boolean {
  const to = tokens.findIndex((token) => token.type === 'cock' && token.parent)
  const rest = to < 0 ? [] : tokens.slice(to + 1)
  const wanted = rest.some(({ type }) => type === 'want')
  const goal = scene.goals.length > 0 || scene.aspects.length > 0
  const wish = rest.some(({ type, word }) => type === 'forWhom' || /^(?:if|to|make)$/u.test(word))
  const isHatched = tokens.some(({ type, word }) => type === 'chick' && /^(?:chick|baby|peep)$/u.test(word))
  return (wanted || (goal && wish)) && !isHatched && !has('photo')
}
const fatherFor = (reading: Reading): Sought | undefined => {
  const own = reading.scene.birds.filter((bird) => isSolid(bird) && !isProduct(bird) && bird.sex !== 'M')
  return own.length > 0 && isFatherToBe(reading) ? { own, wanted: 'M', among: [] } : undefined
}

/** "wives for my New Hamp": the word for the mate tells its sex. */
function sexCalled({ words }: Reading): Sex | undefined {
  if (words.some((word) => /^(?:wife|wives|girlfriends?)$/u.test(word))) return 'F'
  return words.some((word) => /^(?:husband|boyfriend)$/u.test(word)) ? 'M' : undefined
}

const once = (birds: readonly Bird[]): readonly Bird[] => [
  ...new Map(
    birds.map((bird) => [JSON.stringify([bird.ref.breed, bird.ref.line, bird.ref.genotype, bird.ref.cross]), bird]),
  ).values(),
]

/** "3 Cuckoo Silkie girls ..., Silkies are impossible": the bare name again is no other group of birds. */
const withoutBareAgain = (birds: readonly Bird[]): readonly Bird[] =>
  birds.filter((bird) => {
    const bare = bird.saidOf.parts.every(({ type }) => type === 'family' || type === 'hen' || type === 'cock')
    const family = breedNamed(bird.ref.breed ?? '')?.family
    const again = birds.some(
      (other) =>
        other !== bird &&
        other.saidOf.at < bird.saidOf.at &&
        other.ref.breed !== bird.ref.breed &&
        breedNamed(other.ref.breed ?? '')?.family === family,
    )
    return !(bare && again && bird.ref.cross === undefined)
  })

/** "what to put over my Rocks": the other sex than theirs; hens where none is told. */
function sexWanted(told: readonly Bird[], all: readonly Bird[]): Sex | undefined {
  const known = [...told, ...all].map(({ sex }) => sex).find((sex) => sex !== undefined)
  return known === undefined ? (told.length > 0 ? 'M' : undefined) : opposite(known)
}

/** "i want pullets": the chicks, unless there is a cock and no hen. With hens of his own, a cock is looked for. */
function weakly(own: readonly Bird[], sex: Sex): Sought | undefined {
  if (own.some((bird) => bird.sex === opposite(sex)) || sex === 'M') return { own, wanted: sex, among: [] }
  return { own, wanted: 'M', among: [] }
}

/** Eggs a year that are wanted at least: a number of that size beside eggs. */
function minimumEggs({ tokens, scene }: Reading): number | undefined {
  if (!scene.aspects.includes('eggs') && !scene.goals.includes('eggs')) return undefined
  const number = tokens.find((token) => token.type === 'number' && token.value >= 150 && token.value <= 365)
  return number?.type === 'number' ? number.value : undefined
}

const looks = /^(?:black|blue|splash|lavender|chocolate|white|mauve|barred|cuckoo|buff|silver|gold|mottled)$/u
/** "so they all come blue", "for all lavender chicks", "to get splash babies": the one colour that the chicks shall have. */
function chicksWanted({ tokens }: Reading, own: readonly Bird[]): string | undefined {
  const taken = new Set(own.flatMap(({ saidOf }) => saidOf.parts.map(({ at }) => at)))
  const found = tokens.flatMap((token, at): readonly string[] => {
    if (token.type !== 'colour' || taken.has(token.at) || !looks.test(token.colour)) return []
    const before = tokens.slice(Math.max(0, at - 3), at).map(({ word }) => word)
    const after = tokens.slice(at + 1).find(({ type }) => type !== 'filler')
    const ofChicks = after?.type === 'chick'
    const comes = before.some((word) => /^(?:come|comes|hatch|be|are|turn out|breed|breeds)$/u.test(word))
    const all = before.some((word) => /^(?:all|only|every|nothing but|100|100%)$/u.test(word))
    const more =
      before.some((word) => /^(?:more|some|mostly|lots of|lots|enough|plenty)$/u.test(word)) || token.word.endsWith('s')
    const sought = before.some((word) => /^(?:get|want|make|throw|throws|produce|give|for|need)$/u.test(word))
    return (all && (comes || ofChicks || after === undefined || after.type === 'stop')) ||
      (sought && (ofChicks || (more && (after === undefined || after.type === 'stop'))))
      ? [token.colour]
      : []
  })
  return found[0]
}

/** "besides a RIR", "other than Barred Rocks". */
const isLeftOut = ({ saidOf }: Bird, { text }: Reading): boolean =>
  /\b(?:besides?|except(?: for)?|other than|apart from|aside from|but not|excluding|thats? not|that isnt)(?: (?:an?|the|my))?\s*$/iu.test(
    text.slice(Math.max(0, saidOf.at - 30), saidOf.at).replaceAll("'", ''),
  )

/** "more blue", of Easter Eggers and the like: of their eggs. */
function shellWished({ words }: Reading, own: readonly Bird[]): readonly Goal[] {
  const shade = /\b(?:more|all|only|bluer|greener|nice|pretty|darker|get|want) (blue|green|olive)\b/u.exec(
    words.join(' '),
  )?.[1]
  const ofEggs = own.every(({ ref }) => /Egger$|-egg layer$|Ameraucana|Araucana|Legbar/u.test(ref.breed ?? ''))
  return shade !== undefined && ofEggs ? [`${shade}-eggs` as Goal] : []
}

/** "which moms give sexable chicks, and which green eggs". */
const asksGoalByGoal = ({ words }: Reading): boolean => words.filter((word) => word === 'which').length > 1

/** The question for these birds. */
export function partnersOf(reading: Reading, { own, wanted, among: named }: Sought): PartnersQuestion {
  const minimum = minimumEggs(reading)
  const look = chicksWanted(reading, own)
  const besides = named.filter((bird) => isLeftOut(bird, reading))
  const among = named.filter((bird) => !besides.includes(bird))
  return {
    kind: 'partners',
    for: refsOf(own).slice(0, 8),
    wanted,
    goals: [...new Set([...goalsOf(reading), ...shellWished(reading, own)])],
    among: refsOf(look === undefined ? among : among.filter(({ ref }) => !(ref.breed ?? '').endsWith(' bird'))).slice(
      0,
      8,
    ),
    ...(besides.length === 0 ? {} : { besides: refsOf(besides).slice(0, 8) }),
    ...(minimum === undefined ? {} : { minimumEggs: minimum }),
    ...(look === undefined ? {} : { chicks: look }),
    ...(asksGoalByGoal(reading) && among.length > 1 ? { each: true } : {}),
    ...(reading.words.some((word) => /^(?:heritage|traditional)$/u.test(word)) ? { line: 'heritage' } : {}),
    ...commonOf(reading, own),
  }
}

/** "can you get a hen thats split for silver": no bird of the keeper's. */
const isOfCarrying = ({ own }: Sought, { has }: Reading): boolean =>
  has('carry') && own.every(({ saidOf, ref }) => saidOf.carried.length > 0 && ref.breed === undefined)

/** All varieties of a breed lay, sit and fatten alike: their colour decides nothing. */
const isOfHens = ({ goals, chicks }: PartnersQuestion): boolean =>
  chicks === undefined && goals.length > 0 && goals.every((goal) => !ofColour.has(goal))
const ofColour: ReadonlySet<Goal> = new Set(['sexable', 'barred', 'laced', 'show'])

/** "French or English Marans under my Welsummer": one breed in two lines, which is a mating seen twice over. */
const isOfLines = ({ among: [first, ...others] }: Sought): boolean =>
  first !== undefined &&
  others.length > 0 &&
  others.every(({ ref }) => ref.breed === first.ref.breed && ref.line !== first.ref.line)

function inLines({ own: [only, ...others], among, wanted }: Sought, reading: Reading): Question | undefined {
  if (!only || others.length > 0) return undefined
  const pairs = among.map((bird): Pair =>
    wanted === 'F' ? { sire: only, dam: bird, by: 'sex' } : { sire: bird, dam: only, by: 'sex' },
  )
  return crossOf(pairs, reading)
}

export const readPartners: Reader = (reading): Question | undefined => {
  const sought = soughtIn(reading)
  if (!sought || isOfCarrying(sought, reading)) return undefined
  if (isOfLines(sought)) return inLines(sought, reading)
  const fault = sought.own.map((bird) => bird.fault).find((found) => found !== undefined)
  if (fault) return { kind: 'error', fault }
  const [only] = sought.own
  const question = partnersOf(reading, sought)
  if (sought.own.length > 1 || !only || only.others.length === 0 || isOfHens(question)) return question
  return {
    kind: 'ask-back',
    missing: 'variety',
    about: only.said,
    options: [only.ref, ...only.others].slice(0, 5).map((ref) => ({
      label: ref.breed ?? only.said,
      question: { ...question, for: [ref], assumed: question.assumed.filter(({ kind }) => kind !== 'variety') },
    })),
    birds: [only.ref],
    ...commonOf(reading),
  }
}
