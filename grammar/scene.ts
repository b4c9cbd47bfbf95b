// grammar/scene.ts: all that a message says, put together: who is there, of which sex, who is put to whom, what is asked.
import { aspectsOf, goalsOf } from './aspects.ts'
import { birdOf } from './bird.ts'
import { isOfSameBreed, opposite, orderOf, sexByPronoun, sexesOf } from './mates.ts'
import {
  coloursIn,
  familyIn,
  fitsFamily,
  hasBreed,
  inOtherLine,
  isBredOn,
  isHerd,
  isKin,
  isPattern,
  merged,
  names,
} from './naming.ts'
import { isNamed, sexOfGroup, sexSaid } from './saying.ts'
import type { Aspect, Goal } from '../core/question.ts'
import type { Sex } from '../core/vocabulary.ts'
import type { Bird } from './bird.ts'
import type { Entry, Mating } from './mates.ts'
import type { Read } from './parse.ts'
import type { BirdSaid, Group, MatingSaid, Saying } from './saying.ts'
import type { Token } from './token.ts'

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
    const [first] = saying.is
    const onlySex = first !== undefined && !isNamed(first) && sexSaid(first) !== undefined // "the Sussex is the hen"
    const again = entries.findLast(
      (entry) =>
        names(saying.who, entry.said) &&
        (entry.place === 'mating' ||
          (sexSaid(entry.said) === undefined &&
            hasBreed(entry.said) &&
            (!hasBreed(saying.who) || (onlySex && entry.sex === undefined)))),
    )
    const who = bare
      ? { said: saying.who, sex, carry: undefined, place: 'bird' as const }
      : (again ?? enter(saying.who, sex, 'bird', [saying.who]))
    if (!bare && onlySex) who.sex = saying.not ? opposite(sexSaid(first)!) : sexSaid(first)
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
    aspects: aspectsOf(tokens, { laying, mated: matings.length > 0 }),
    goals: goalsOf(tokens),
  }
}

/** "..., what sort of layers": what the daughters are, once a mating is told. */
const asksLaying = ({ bare, for: birds }: Extract<Saying, { kind: 'wanted' }>, matings: number): boolean =>
  matings > 0 &&
  birds.length === 0 &&
  bare !== undefined &&
  bare.parts.some(({ word }) => /^layers?$/u.test(word)) &&
  !isNamed(bare)
