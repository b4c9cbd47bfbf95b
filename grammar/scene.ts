// grammar/scene.ts: all that a message says, put together: who is there, of which sex, who is put to whom, what is asked.
import { breedNamed } from '../core/breeds.ts'
import { birdOf, type Bird } from './bird.ts'
import { isPluralName } from './partTaken.ts'
import { hasVariety } from './variety.ts'
import { isNamed, sexOfGroup, sexSaid, type BirdSaid, type Group, type MatingSaid, type Saying } from './saying.ts'
import type { Aspect, Goal } from '../core/question.ts'
import type { Sex } from '../core/vocabulary.ts'
import type { Read } from './parse.ts'
import type { Token } from './token.ts'
import type { Colour } from './words/colours.ts'

export type Mating = {
  readonly sires: readonly Bird[]
  readonly dams: readonly Bird[]
  /** How it is known who is the male: a sex word, the order of the words, or not at all. */
  readonly by: 'sex' | 'order' | 'nothing'
}
export type Wanted = {
  readonly sex: Sex | undefined
  readonly firm: boolean
  readonly for: readonly Bird[]
  readonly colours: boolean
  readonly at: number
}
export type Told = {
  readonly who: Bird
  readonly is: readonly Bird[]
  readonly not: boolean
  readonly corrects: boolean
}
export type Change = { readonly how: 'swap' | 'same' | 'about' | 'instead'; readonly part?: Sex; readonly birds: Group }
export type Counted = Extract<Saying, { kind: 'tally' }>

export type Scene = {
  readonly matings: readonly Mating[]
  /** Every bird outside a mating, in order. */
  readonly birds: readonly Bird[]
  readonly wanted: readonly Wanted[]
  readonly told: readonly Told[]
  readonly tallies: readonly Counted[]
  readonly changes: readonly Change[]
  /** Birds said to be chicks of a mating, or of a bird. */
  readonly offspring: readonly Extract<Saying, { kind: 'offspring' }>[]
  readonly aspects: readonly Aspect[]
  readonly goals: readonly Goal[]
}

type Entry = { said: BirdSaid; sex: Sex | undefined; carry: string | undefined; place: 'mating' | 'bird' }

const opposite = (sex: Sex): Sex => (sex === 'M' ? 'F' : 'M')
const unique = <T>(list: readonly T[]): readonly T[] => [...new Set(list)]

const familyIn = (said: BirdSaid): string | undefined => {
  for (const part of said.parts) {
    if (part.type === 'family') return part.family
    if (part.type === 'breed' && part.names[0] !== undefined) return breedNamed(part.names[0])?.family
  }
  return undefined
}
const hasBreed = (said: BirdSaid): boolean =>
  said.parts.some(({ type }) => type === 'breed' || type === 'family') || said.cross !== undefined
const coloursIn = (said: BirdSaid): readonly Colour[] =>
  said.parts.flatMap((part) => (part.type === 'colour' ? [part.colour] : []))
/** Colours that are spoken of within one breed, or with "ones" behind them. */
const isPattern = (said: BirdSaid): boolean =>
  coloursIn(said).some((colour) =>
    ['laced', 'pencilled', 'spangled', 'short legged', 'long legged', 'tufted', 'clean-faced'].includes(colour),
  ) || said.parts.some(({ type, word }) => type === 'colour' && word.endsWith(' ones'))

/** Is this word for a bird of the message one that names it again: "the red", "the Australorp"? */
function names(again: BirdSaid, bird: BirdSaid): boolean {
  const whole = again.parts.find((part) => part.type === 'breed')
  if (whole?.type === 'breed')
    return bird.parts.some((part) => part.type === 'breed' && part.names[0] === whole.names[0])
  const [one, other] = [familyIn(again), familyIn(bird)]
  if (one !== undefined)
    return (
      one === other &&
      coloursIn(again).every(
        (colour) => coloursIn(bird).length === 0 || coloursIn(bird).includes(colour) || nameHas(bird, colour),
      )
    )
  const colours = coloursIn(again)
  return colours.length > 0 && colours.every((colour) => coloursIn(bird).includes(colour) || nameHas(bird, colour))
}
const nameHas = (bird: BirdSaid, colour: Colour): boolean =>
  bird.parts.some((part) => part.type === 'breed' && (part.names[0] ?? '').toLowerCase().includes(colour))

/** "Welsummers and my Orpington cockerel": one cock, and so many hens. */
const isHerd = (said: BirdSaid, group: Group): boolean =>
  sexSaid(said) === undefined &&
  isPluralName(said) &&
  group.some((one) => one !== said && one.parts.some((part) => part.type === 'cock' && !part.many))

/** "hatchery Barred Rocks vs exhibition ones": the same breed in another line. */
function inOtherLine(said: BirdSaid, list: Group): BirdSaid {
  const line = said.parts.some(({ type }) => type === 'line')
  const other = list.find((one) => one !== said && one.parts.some(({ type }) => type === 'line') && hasBreed(one))
  if (!line || hasBreed(said) || !other) return said
  return { ...said, parts: [...other.parts.filter(({ type }) => type === 'breed' || type === 'family'), ...said.parts] }
}

/** "his mother", "Grandsire": kin of a bird, and no mate of it. */
const isKin = ({ parts }: BirdSaid): boolean =>
  parts.some(({ type }) => type === 'kin') ||
  (parts.some(({ type }) => type === 'his' || type === 'her') &&
    parts.some((part) => (part.type === 'cock' || part.type === 'hen') && part.parent))

const merged = (of: BirdSaid, more: BirdSaid): BirdSaid => ({
  ...of,
  parts: [...of.parts, ...more.parts.filter(({ type }) => !['their', 'my', 'number'].includes(type))],
  lacks: [...of.lacks, ...more.lacks],
  carried: [...of.carried, ...more.carried],
  split: of.split || more.split,
  cross: of.cross ?? more.cross,
})

/** Is there such a variety of that breed? */
function fitsFamily(said: BirdSaid, family: string | undefined): boolean {
  if (family === undefined) return false
  const own = familyIn(said)
  if (own !== undefined)
    return own === family && (said.parts.some(({ type }) => type === 'breed') || coloursIn(said).length > 0)
  const colours = coloursIn(said)
  return colours.length > 0 && hasVariety(family, colours)
}

/** "I kept a cockerel from A x B. Can I put him on ...": the young bird itself goes on, and not its parents. */
function isBredOn(who: BirdSaid, tokens: readonly Token[]): boolean {
  const sex = sexSaid(who)
  const pronoun = sex === 'M' ? /^(?:he|him|hes)$/u : sex === 'F' ? /^(?:she|her|shes|them|they)$/u : undefined
  const at = tokens.findIndex((token) => token.at > who.end && pronoun?.test(token.word) === true)
  const joins = tokens
    .slice(Math.max(0, at - 3), at + 4)
    .some(({ type }) => type === 'over' || type === 'under' || type === 'cross')
  return at >= 0 && joins && tokens.slice(at).some(({ type }) => type === 'breed' || type === 'family')
}

const heWord = /^(?:he|hes|him|his)$/u
const sheWord = /^(?:she|shes|her|hers)$/u
/** "my RIR is from show stock. He runs with ...": the bird named last before "he" is a cock, if no sex was told of it. */
function sexByPronoun(entries: readonly Entry[], tokens: readonly Token[]): void {
  for (const [i, { word, at }] of tokens.entries()) {
    const sex = heWord.test(word) ? 'M' : sheWord.test(word) ? 'F' : undefined
    const next = tokens[i + 1]
    const owns =
      (word === 'his' || word === 'her') && (next?.type === 'kin' || next?.type === 'hen' || next?.type === 'cock')
    if (sex === undefined || owns) continue
    const last = entries.findLast(({ said }) => said.at < at && isNamed(said))
    const several = last?.said.parts.some((part) => part.type === 'number' && part.value > 1) === true // no single "he"
    const sought =
      sex === 'M' &&
      /^(?:should|must|ought|would|can|could|be|is)$/u.test(tokens[i - 1]?.word ?? '') &&
      /^be$/u.test(next?.word ?? '')
    if (several || sought) continue
    if (last && last.sex === undefined && hasBreed(last.said) && last.place === 'bird' && last.said.lacks.length === 0)
      last.sex = sex
  }
}

/** Puts the sayings of a message together, in order. One value, filled and handed out. */
export function sceneOf(
  clauses: readonly (readonly Read[])[],
  tokens: readonly Token[],
  ofBoth: readonly Token[] = [],
): Scene {
  const entries: Entry[] = []
  const matings: { first: Entry[]; second: Entry[]; said: MatingSaid }[] = []
  const wanted: { saying: Extract<Saying, { kind: 'wanted' }>; for: Entry[] }[] = []
  const told: { saying: Extract<Saying, { kind: 'told' }>; who: Entry; is: Entry[] }[] = []
  const tallies: Counted[] = []
  const changes: Change[] = []
  const offspring: Extract<Saying, { kind: 'offspring' }>[] = []
  let laying = false
  let lastTold: Entry | undefined
  let open: Entry | undefined
  let heading: Entry | undefined

  const enter = (said: BirdSaid, sex: Sex | undefined, place: Entry['place'], list: Group): Entry => {
    const near =
      list.find((one) => one !== said && hasBreed(one)) ??
      (isPattern(said) ? entries.findLast((entry) => hasBreed(entry.said))?.said : undefined)
    const entry: Entry = {
      said: inOtherLine(said, list),
      sex: sexSaid(said) ?? sex,
      carry: near && familyIn(near),
      place,
    }
    entries.push(entry)
    return entry
  }
  const enterAll = (group: Group, sex: Sex | undefined, place: Entry['place'], more: Group = []): Entry[] =>
    group.map((said) => enter(said, sexOfGroup(group) ?? sex, place, [...group, ...more]))

  /** "its red, more like a brick, no stripes": said of the last bird of which only the sex was told. */
  const describes = (said: BirdSaid, follows: boolean): boolean =>
    open !== undefined &&
    sexSaid(said) === undefined &&
    !hasBreed(said) &&
    (said.lacks.length > 0 ||
      coloursIn(said).length > 0 ||
      said.parts.some(({ type }) => type === 'gene' || type === 'line') ||
      said.carried.length > 0) &&
    (follows || said.lacks.length > 0 || said.parts[0]?.type === 'their' || said.parts[0]?.type === 'his')

  /** "legbar x ameraucana (legbar hen)": the sex of a bird that stood in a mating without one. */
  const sexesAgain = (said: BirdSaid): boolean => {
    const sex = sexSaid(said)
    const again = entries.filter(
      ({ place, sex: told, said: before }) =>
        place === 'mating' && told === undefined && hasBreed(said) && names(said, before),
    )
    if (sex === undefined || again.length === 0) return false
    for (const entry of again) entry.sex = sex
    return true
  }

  /** "ameraucana x marans (black, black copper)": the colour of a bird that stood in a mating without one. */
  const refines = (said: BirdSaid, group: Group): boolean => {
    const bare = entries.find(
      ({ place, said: before }) =>
        place === 'mating' &&
        before.parts.some(({ type }) => type === 'family') &&
        coloursIn(before).length === 0 &&
        fitsFamily(said, familyIn(before)),
    )
    if (!bare || sexSaid(said) !== undefined || (!hasBreed(said) && group.length < 2)) return false
    bare.said = merged(bare.said, { ...said, parts: said.parts.filter(({ type }) => type !== 'family') })
    return true
  }

  /** "one rooster, a Delaware"; "possible dads: Welsummer or Barnevelder": the words right behind a sex say which bird. */
  const heads = (group: Group): boolean => {
    const head = heading
    const [front, ...rest] = group
    if (
      head?.sex &&
      front &&
      sexSaid(front) === undefined &&
      hasBreed(front) &&
      sexOfGroup(rest) === opposite(head.sex)
    ) {
      head.said = merged(head.said, front)
      heading = undefined
      mention(rest)
      return true
    }
    if (!head || group.some((said) => sexSaid(said) !== undefined || !hasBreed(said))) return false
    const [first] = group
    const filled = head.said.parts.some(({ type }) => type === 'breed' || type === 'family')
    if (group.length === 1 && first && !filled) head.said = merged(head.said, first)
    else group.forEach((said) => enter(said, head.sex, 'bird', group))
    return true
  }

  /** "..., both E/E": of every bird of the mating before. */
  const genesOfAll = (group: Group): boolean => {
    const [said] = group
    const mating = matings.at(-1)
    if (
      !said ||
      !mating ||
      group.length > 1 ||
      said.parts.length === 0 ||
      !said.parts.every(({ type }) => type === 'gene')
    )
      return false
    for (const entry of said.gap ? [...mating.first, ...mating.second] : mating.second)
      entry.said = merged(entry.said, said)
    return true
  }

  /** "Welsummer with one blue egg copy (O/o+)": of the bird just named. */
  const genesOfLast = (group: Group): boolean => {
    const [said, ...rest] = group
    const last = entries.at(-1)
    const bare = said && said.parts.length > 0 && said.parts.every(({ type }) => type === 'gene')
    if (!said || !bare || rest.length > 0 || !last || last.place !== 'bird' || !hasBreed(last.said)) return false
    const [own, told] = [birdOf(said).sex, sexSaid(last.said)]
    if ((own !== undefined && own !== told) || last.said.parts.some(({ type }) => type === 'gene')) return false
    last.said = merged(last.said, said)
    return true
  }

  /** "a Silkie rooster, hes white": the colour of the bird just named without one. */
  const colours = (group: Group): boolean => {
    const [said, ...rest] = group
    const last = entries.at(-1)
    const pointing =
      said?.parts[0]?.type === 'his' || said?.parts[0]?.type === 'her' || said?.parts[0]?.type === 'their'
    if (!said || !last || !pointing || rest.length > 0 || hasBreed(said) || sexSaid(said) !== undefined) return false
    if (coloursIn(last.said).length > 0 || !fitsFamily(said, familyIn(last.said))) return false
    last.said = merged(last.said, { ...said, parts: said.parts.slice(1) })
    return true
  }

  /** "half Silkie half Cochin (black Silkie dad, buff Cochin mom)": the parents told once more. */
  const crossAgain = (group: Group): boolean => {
    const [said, ...rest] = group
    const last = entries.at(-1)
    if (!said?.cross || said.parts.length > 0 || rest.length > 0 || !last?.said.cross) return false
    last.said = { ...last.said, cross: said.cross }
    return true
  }

  /** "if the Marans is cuckoo and the mum": the part it plays, behind what it is. */
  const partTold = (group: Group): boolean => {
    const [said, ...rest] = group
    const sex = said && sexSaid(said)
    if (!sex || rest.length > 0 || isNamed(said) || !lastTold || lastTold.sex !== undefined || said.parts.length > 1)
      return false
    lastTold.sex = sex
    return true
  }

  const mention = (group: Group): void => {
    if (partTold(group) || crossAgain(group) || colours(group)) return
    let follows = false
    const plural =
      heading?.said.parts.some((part) => (part.type === 'cock' || part.type === 'hen') && part.many) === true
    const headed = heads(group)
    if (!(headed && plural)) heading = undefined
    if (headed) return
    if (genesOfAll(group) || genesOfLast(group)) return
    for (const said of group) {
      if (open && describes(said, follows)) {
        open.said = merged(open.said, said)
        follows = true
        continue
      }
      follows = false
      if (sexesAgain(said) || refines(said, group)) continue
      const entry = enter(said, isHerd(said, group) ? undefined : sexOfGroup(group), 'bird', group)
      if (
        entry.sex !== undefined &&
        !isNamed(said) &&
        !entry.said.parts.some((part) => (part.type === 'cock' || part.type === 'hen') && part.many)
      )
        open = entry
      else if (hasBreed(said) && said.lacks.length === 0) open = undefined
      if (group.length === 1 && entry.sex !== undefined && !isNamed(said)) heading = entry
    }
  }

  const identify = (saying: Extract<Saying, { kind: 'told' }>): void => {
    if (isKin(saying.who)) return
    const sex = sexSaid(saying.who)
    const bare = !isNamed(saying.who) && sex !== undefined
    const is = saying.is.map((said): Entry => {
      const before = entries.filter((entry) => isNamed(entry.said) && names(said, entry.said))
      if (bare && before.length > 0 && !saying.not) {
        before.forEach((entry) => (entry.sex ??= sex))
        if (before.some((entry) => entry.sex === sex)) return before[0]!
      }
      if (isNamed(saying.who) && !hasBreed(said)) return { said, sex: sexSaid(said), carry: undefined, place: 'bird' }
      return enter(said, bare && !saying.not ? sex : undefined, 'bird', saying.is)
    })
    const again = entries.findLast(
      (entry) =>
        names(saying.who, entry.said) &&
        (entry.place === 'mating' ||
          (sexSaid(entry.said) === undefined && hasBreed(entry.said) && !hasBreed(saying.who))),
    )
    const who = bare
      ? { said: saying.who, sex, carry: undefined, place: 'bird' as const }
      : (again ?? enter(saying.who, sex, 'bird', [saying.who]))
    const [first] = saying.is
    if (!bare && first && !isNamed(first) && sexSaid(first) !== undefined)
      who.sex = saying.not ? opposite(sexSaid(first)!) : sexSaid(first)
    else if (!bare && first && !hasBreed(first)) {
      for (const other of saying.is.slice(1).filter((one) => !hasBreed(one) && !isNamed(one)))
        entries.push({ ...who, said: merged(who.said, other) })
      who.said = merged(who.said, first)
    }
    told.push({ saying, who, is })
    lastTold = bare || saying.not ? undefined : who
  }

  for (const saying of clauses.flatMap((reads) => reads.flatMap(({ readings }) => readings.slice(0, 1)))) {
    if (saying.kind !== 'birds') heading = undefined
    if (saying.kind !== 'birds' && saying.kind !== 'told') lastTold = undefined
    switch (saying.kind) {
      case 'matings':
        for (const said of saying.matings) {
          const [one, other] = sexesOf(said)
          matings.push({
            said,
            first: enterAll(said.first, one, 'mating', isOfSameBreed(said) ? said.second : []),
            second: enterAll(said.second, other, 'mating'),
          })
        }
        open = undefined
        break
      case 'birds':
        mention(saying.birds)
        break
      case 'told':
        if (saying.who.parts[0]?.type === 'their' && saying.who.parts.length === 1) mention(saying.is)
        else identify(saying)
        break
      case 'wanted': {
        if (saying.bare?.parts.some(({ type }) => type === 'kin')) break // "what do the daughters lay"
        if (asksLaying(saying, matings.length)) {
          laying = true
          break
        }
        const sex = saying.bare && sexSaid(saying.bare)
        wanted.push({ saying, for: enterAll(saying.for, sex && opposite(sex), 'bird') })
        break
      }
      case 'offspring': {
        offspring.push(saying)
        if (saying.who && 'first' in saying.of && isBredOn(saying.who, tokens)) {
          enter({ ...saying.who, cross: saying.of }, undefined, 'bird', [])
        } else if ('first' in saying.of) {
          const [one, other] = sexesOf(saying.of)
          matings.push({
            said: saying.of,
            first: enterAll(saying.of.first, one, 'mating'),
            second: enterAll(saying.of.second, other, 'mating'),
          })
        } else enter(saying.of, undefined, 'bird', [saying.of])
        break
      }
      case 'tally':
        tallies.push(saying)
        break
      case 'change':
        if (saying.how === 'instead') mention(saying.birds)
        changes.push({ how: saying.how, ...(saying.part ? { part: saying.part } : {}), birds: saying.birds })
        break
      case 'asked':
        break
    }
  }

  sexByPronoun(entries, tokens)
  for (const entry of ofBoth.length > 0 ? entries : [])
    if (
      coloursIn(entry.said).length === 0 &&
      fitsFamily({ ...entry.said, parts: [...entry.said.parts, ...ofBoth] }, familyIn(entry.said))
    )
      entry.said = { ...entry.said, parts: [...entry.said.parts, ...ofBoth] }

  const bird = ({ said, sex, carry }: Entry): Bird => birdOf(said, sex, carry)
  return {
    matings: matings.map(({ first, second, said }) => orderOf(first, second, said)),
    birds: entries.filter(({ place }) => place === 'bird').map(bird),
    wanted: wanted.map(({ saying, for: birds }) => ({
      sex: saying.sex ?? (saying.bare && sexSaid(saying.bare)),
      firm: saying.firm,
      for: birds.map(bird),
      colours: saying.bare !== undefined && isNamed(saying.bare),
      at: saying.at,
    })),
    told: told.map(({ saying, who, is }) => ({
      who: bird(who),
      is: is.map(bird),
      not: saying.not,
      corrects: saying.corrects,
    })),
    tallies,
    changes,
    offspring,
    aspects: unique([
      ...aspectsOf(tokens),
      ...(laying ? (['eggs'] as const) : []),
      ...(tokens.some((token, at) => token.word === 'brown' && tokens[at - 1]?.word === 'how') && matings.length > 0
        ? (['shell'] as const)
        : []),
      ...(asksWhichSex(tokens) ? (['sexing'] as const) : []),
    ]),
    goals: unique(
      tokens.flatMap((token, at): readonly Goal[] =>
        areChicks(tokens, at) || isUnwished(tokens, at)
          ? []
          : token.type === 'goal'
            ? isDual(token.word)
              ? ['eggs', token.goal]
              : [token.goal]
            : token.type === 'sexlink'
              ? ['sexable']
              : [],
      ),
    ),
  }
}

const ofColour = /(?:colou?r|shade|couleur|farbe|kleur|color)/u
const ofLaying = /^(?:eggs?|lay|lays|laying)/u

/** "and their eggs, what colour", "what colour will the daughters lay", "how brown are the eggs": of the shell, not of the chicks. */
function isOfShell(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at]!
  if (token.type !== 'aspect') return false
  const asksColour = token.aspect === 'chicks' && ofColour.test(token.word)
  const rest = tokens.slice(at + 1, at + 18)
  const end = rest.findIndex(({ type }) => type === 'stop')
  const after = end < 0 ? rest : rest.slice(0, end)
  const laid = after.find((next) => next.type === 'aspect' && next.aspect === 'eggs')
  const before = tokens
    .slice(Math.max(0, at - 3), at)
    .findLast(({ type }) => type !== 'filler' && type !== 'comma' && type !== 'and' && type !== 'is')
  const between = laid ? after.slice(0, after.indexOf(laid)) : after
  return (
    asksColour &&
    ((laid !== undefined && !between.some(({ type }) => type === 'comma' || type === 'and' || type === 'chick')) ||
      (before?.type === 'aspect' && before.aspect === 'eggs' && ofLaying.test(before.word)))
  )
}

/** "I don't care about sexing", "never mind the eggs". */
const isUnwanted = (tokens: readonly Token[], at: number): boolean =>
  /\b(?:(?:dont|not|doesnt|no) (?:\w+ )?(?:care|bothered|fussed|mind|matter|need|worried)|never mind|regardless of)\b/u.test(
    tokens
      .slice(Math.max(0, at - 5), at)
      .map(({ word }) => word)
      .join(' '),
  )

/** "best layers, no broody", "that dont go broody": what is not to be. */
const isUnwished = (tokens: readonly Token[], at: number): boolean =>
  /^(?:broody|broodies|broodiness|go broody|goes broody|going broody|broody hens)$/u.test(tokens[at]!.word) &&
  tokens
    .slice(Math.max(0, at - 3), at)
    .some(({ word }) => /^(?:no|not|dont|doesnt|wont|never|non|without|less|rarely|seldom|isnt|arent)$/u.test(word)) &&
  tokens.some(({ type }) => type === 'goal' || type === 'which' || type === 'want')

/** "safe to say he has two": nothing of harm. */
const isSafeToSay = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]!.word === 'safe' &&
  /^to (?:say|assume|bet|call)/u.test(
    tokens
      .slice(at + 1, at + 3)
      .map(({ word }) => word)
      .join(' '),
  )

/** "big crests": no weight is asked. */
const isOfPart = (tokens: readonly Token[], at: number): boolean =>
  /^(?:big|heavy|nice)$/u.test(tokens[at]!.word) &&
  (tokens[at + 1]?.type === 'trait' ||
    /^(?:crests?|combs?|beards?|muffs?|feet|wattles|poms?|topknots?|hair)$/u.test(tokens[at + 1]?.word ?? ''))

/** "the red sort", "what sort for eggs". */
const isNoun = (tokens: readonly Token[], at: number): boolean =>
  ['close', 'stop', 'comma', 'forWhom', 'of'].includes(tokens[at + 1]?.type ?? 'stop') &&
  ['breed', 'family', 'colour', 'which', 'sexlink', 'their', 'filler'].includes(tokens[at - 1]?.type ?? '')

function aspectsOf(tokens: readonly Token[]): readonly Aspect[] {
  const shades = tokens.some(
    (token, at) =>
      isOfShell(tokens, at) ||
      (token.type === 'colour' &&
        tokens[at - 1]?.word === 'how' &&
        tokens.slice(at + 1, at + 5).some((next) => next.type === 'aspect' && next.aspect === 'eggs')),
  )
  const shells = tokens.some(
    (token, at) => (token.type === 'aspect' && token.aspect === 'shell') || isOfShell(tokens, at),
  )
  // "the weight of a grown pullet"
  const weighed = tokens.some((token) => token.type === 'aspect' && token.aspect === 'size')
  return unique(
    tokens.flatMap((token, at): readonly Aspect[] => {
      if (token.type !== 'aspect' || isSet(tokens, at)) return []
      if (isOfShell(tokens, at)) return ['shell']
      if (
        (token.word === 'sort' && isNoun(tokens, at)) ||
        isUnwanted(tokens, at) ||
        isOfPart(tokens, at) ||
        (token.aspect === 'broody' && isUnwished(tokens, at)) ||
        isSafeToSay(tokens, at)
      )
        return []
      if (token.aspect === 'adults' && weighed) return []
      if (shells && /^(?:come|comes|turn)s? out$/u.test(token.word)) return [] // what eggs come out
      if (areChicks(tokens, at)) return ['chicks']
      if (token.word.startsWith('brood') && /^(?:went|gone|gotten)$/u.test(tokens[at - 1]?.word ?? '')) return [] // a hen that sits
      if (token.aspect === 'wings') return ['sexing', 'wings']
      return [
        shades && token.aspect === 'eggs' && !/number|many|year|count|week/u.test(token.word) ? 'shell' : token.aspect,
      ]
    }),
  )
}

/** A hen that lays and fills a pot. */
const isDual = (word: string): boolean => /^(?:dual|dp|dual purpose|meat and eggs)$/u.test(word)

/** "which ones are the girls", "which of them r boys". */
const asksWhichSex = (tokens: readonly Token[]): boolean =>
  /\b(?:which|wich|what|who)(?: (?:ones?|of (?:them|these|those)|chicks?))?s? (?:are|is|r|will be|would be)(?: the| all| my)? (?:girls|boys|hens|pullets|cockerels|roos|roosters|males|females|cocks|lads|ladies)\b/u.test(
    tokens
      .slice(0, 60)
      .map(({ word }) => word)
      .join(' '),
  )

/** "the kids", "their children": the chicks, where no child is to keep them. */
const areChicks = (tokens: readonly Token[], at: number): boolean =>
  /^(?:kids|children)$/u.test(tokens[at]!.word) &&
  !tokens
    .slice(Math.max(0, at - 4), at)
    .some(({ word }) => /\b(?:for|with|around|near|about|my|have|nice|good|safe|friendly|grand|two|and)\b/u.test(word))

/** "lavender x chocolate Orpington": the breed is told once, behind both. */
const isOfSameBreed = ({ first, second, plain, order }: MatingSaid): boolean =>
  plain &&
  order === 'male first' &&
  first.every((said) => !hasBreed(said) && sexSaid(said) === undefined) &&
  second.some(
    (said) => hasBreed(said) && (coloursIn(said).length > 0 || said.parts.some(({ type }) => type === 'breed')),
  )

/** "..., what sort of layers": what the daughters are, once a mating is told. */
const asksLaying = ({ bare, for: birds }: Extract<Saying, { kind: 'wanted' }>, matings: number): boolean =>
  matings > 0 &&
  birds.length === 0 &&
  bare !== undefined &&
  bare.parts.some(({ word }) => /^layers?$/u.test(word)) &&
  !isNamed(bare)

/** "8 eggs in the bator", "set a dozen eggs": eggs that are counted, and no question of laying. */
function isSet(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at]!
  if (token.type !== 'aspect' || token.aspect !== 'eggs' || !/^(?:eggs?)$/u.test(token.word)) return false
  const before = tokens.slice(Math.max(0, at - 3), at)
  const after = tokens.slice(at + 1, at + 6).map(({ word }) => word)
  const sat = before.some(({ word }) => /brood|^(?:sitting|sat)$/u.test(word)) && before.at(-1)?.word === 'on'
  const counted = before.some(
    ({ type, word }) => type === 'number' || word === 'some' || word === 'few' || word === 'dozen',
  )
  return (
    sat ||
    (counted &&
      after.some((word) =>
        /^(?:bator|incubator|incubating|set|cooking|broody|brooding|hatching|brewing|going)$/u.test(word),
      ))
  )
}

const sexesOf = (said: MatingSaid): readonly [Sex | undefined, Sex | undefined] => [
  sexOfGroup(said.first),
  sexOfGroup(said.second),
]

/** Who is the male: by sex words first, then by what genes tell, then by the order of the words. */
function orderOf(first: readonly Entry[], second: readonly Entry[], said: MatingSaid): Mating {
  const of = (entries: readonly Entry[], sex: Sex | undefined): readonly Bird[] =>
    entries.map((entry) => birdOf(entry.said, sex ?? entry.sex, entry.carry))
  const sexOf = (entries: readonly Entry[]): Sex | undefined =>
    entries.map((entry) => entry.sex ?? birdOf(entry.said).sex).find((sex) => sex !== undefined)
  const [one, other] = [sexOf(first), sexOf(second)]
  const chicks = one === undefined && other === 'M' && said.order === 'male first' && isChicks(second)
  if (!chicks && (one === 'M' || other === 'F') && !(one === 'F' || other === 'M'))
    return {
      sires: of(first, 'M'),
      dams: of(second, 'F'),
      by: one === undefined && said.order === 'either' ? 'sex' : 'sex',
    }
  if (!chicks && (one === 'F' || other === 'M')) return { sires: of(second, 'M'), dams: of(first, 'F'), by: 'sex' }
  if (said.order === 'female first') return { sires: of(second, 'M'), dams: of(first, 'F'), by: 'order' }
  return { sires: of(first, 'M'), dams: of(unsexed(second), 'F'), by: said.order === 'either' ? 'nothing' : 'order' }
}

/** "RIR x BR cockerels": the sons are asked about. */
const isChicks = (entries: readonly Entry[]): boolean =>
  entries.length === 1 && entries[0]!.said.parts.some((part) => part.type === 'cock' && part.many)
const unsexed = (entries: readonly Entry[]): readonly Entry[] =>
  entries.map((entry) => ({
    ...entry,
    sex: undefined,
    said: { ...entry.said, parts: entry.said.parts.filter(({ type }) => type !== 'cock') },
  }))
