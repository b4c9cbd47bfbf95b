// grammar/read/parents.ts: what did I hatch, and who can the father be: chicks described, and the parents in question.
import { asksWay, commonOf, isHybrid, isSolid, numberBefore, refsOf, type Reader } from './common.ts'
import { isSpot } from './chicks.ts'
import { isFatherToBe } from './partners.ts'
import { isToldPair } from './pairs.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { ParentsQuestion } from '../../core/question.ts'

type Token = Reading['tokens'][number]
type Chick = ParentsQuestion['chicks'][number]

const formOf: Readonly<Record<string, string>> = {
  muffs: 'muffed',
  crest: 'crested',
  'feathered legs': 'feathered shanks',
  'five toes': 'five toes',
  'naked neck': 'naked neck',
  frizzle: 'frizzled',
  tufts: 'tufted',
  'silkie feather': 'silkie feathered',
  'dark skin': 'dark skin',
  'yellow legs': 'yellow shanks',
  'dark legs': 'dark shanks',
}
const combOf: Readonly<Record<string, string>> = { 'pea comb': 'pea', 'single comb': 'single', 'rose comb': 'rose' }

/** Words of a look: colours outside any named bird, and what else is said of the chick. */
function looksIn({ tokens, clauses }: Reading): readonly Token[] {
  const taken = new Set<number>()
  for (const { readings } of clauses.flat())
    for (const saying of readings.slice(0, 1)) {
      const birds =
        saying.kind === 'birds'
          ? saying.birds
          : saying.kind === 'told'
            ? [saying.who, ...saying.is]
            : saying.kind === 'matings'
              ? saying.matings.flatMap(({ first, second }) => [...first, ...second])
              : saying.kind === 'wanted'
                ? saying.for
                : []
      for (const { parts } of birds)
        if (
          saying.kind === 'matings' ||
          parts.some(({ type }) => type === 'breed' || type === 'family' || type === 'cock' || type === 'hen')
        )
          parts.forEach((part) => taken.add(part.at))
    }
  return tokens.filter(
    (token, i) => token.type === 'colour' && !taken.has(token.at) && !isPartOnly(tokens.slice(i, i + 3)),
  )
}

/** A pale belly is on most dark chicks, and a speck on most pale ones: neither is the colour of the chick. */
const isPartOnly = ([colour, next, last]: readonly Token[]): boolean =>
  isSpot(next) ||
  /^(?:specks?|speckles?|flecks?|dots?)$/iu.test(colour?.said ?? '') ||
  [next, next?.type === 'filler' || next?.type === 'and' ? last : undefined].some((token) =>
    /^(?:bell(?:y|ies)|tumm(?:y|ies)|chests?|breasts?|bums?|bottoms?|wing ?tips?|specks?|flecks?|dots?)$/iu.test(
      token?.said ?? '',
    ),
  )

const combWords = (text: string): string | undefined =>
  /\b(pea|single|rose|walnut|straight|v|cushion)[ -]?comb/iu
    .exec(text)?.[1]
    ?.toLowerCase()
    .replace('straight', 'single')

function chicksIn(reading: Reading): readonly Chick[] {
  const { scene, tokens, text } = reading
  const traits = tokens.flatMap((token) => (token.type === 'trait' ? [token.trait] : []))
  const form = [
    ...new Set(
      traits
        .flatMap((trait) => formOf[trait] ?? [])
        .concat(tokens.some((token) => token.type === 'colour' && token.colour === 'crested') ? ['crested'] : []),
    ),
  ]
  const comb =
    traits.map((trait) => combOf[trait]).find((found) => found !== undefined) ?? combWords(text.slice(0, 4000))
  const rest = { ...(comb === undefined ? {} : { comb }), form }
  const tallied = scene.tallies.flatMap(({ count, look }): readonly Chick[] => {
    const words = look.filter(({ type }) => type === 'colour' || type === 'trait').map(({ word }) => word)
    const sex = look.some(({ type }) => type === 'cock')
      ? 'M'
      : look.some(({ type }) => type === 'hen')
        ? 'F'
        : undefined
    return words.length === 0 && sex === undefined
      ? []
      : [
          {
            tally: {
              count: Math.round(count),
              ...(sex ? { sex } : {}),
              ...(words.length > 0 ? { look: words.join(' ') } : {}),
            },
            ...rest,
          },
        ]
  })
  if (tallied.length > 0) return tallied
  const counted = countedLooks(reading)
  if (counted.length > 0) return counted.map((tally) => ({ tally, ...rest }))
  const spotted = tokens.some((token, at) => isSpot(token) && tokens[at - 1]?.type !== 'not') ? ['spot'] : []
  const barred = traits.includes('barring') ? ['barred'] : []
  const looks = [...looksIn(reading).map(({ word }) => word), ...spotted, ...barred]
  const count = numberBefore(reading, ({ type }) => type === 'chick', 3) ?? 1
  return looks.length > 0 || form.length > 0 || comb !== undefined
    ? [
        {
          tally: {
            count: Math.max(1, Math.round(count)),
            ...(looks.length > 0 ? { look: [...new Set(looks)].join(' ') } : {}),
          },
          ...rest,
        },
      ]
    : []
}

/** "6 white and 2 black": a number right before a colour that is no part of a bird's name. */
function countedLooks(reading: Reading): readonly Chick['tally'][] {
  const looks = new Set(looksIn(reading).map(({ at }) => at))
  return reading.tokens.flatMap((token, i) => {
    const next = reading.tokens[i + 1]
    if (token.type !== 'number' || token.percent || !next || !looks.has(next.at) || token.value > 500) return []
    return [{ count: Math.round(token.value), look: next.word }]
  })
}

/** "could the Leghorn rooster be the father or was it the Ameraucana": of the same part as the bird before. */
function isOtherThan({ saidOf }: Bird, { tokens }: Reading): boolean {
  const at = tokens.findIndex(({ at: place }) => place >= saidOf.at)
  return tokens.slice(Math.max(0, at - 4), Math.max(at, 0)).some(({ type }) => type === 'or')
}

/** "a barred cockerel by the look of him", "black chick 5 toes": the young bird itself, told by its looks alone. */
function isChickItself({ saidOf, sex }: Bird, { tokens }: Reading): boolean {
  if (saidOf.parts.some(({ type }) => type === 'breed' || type === 'family' || type === 'gene')) return false
  const young = saidOf.parts.some(({ word }) => /^(?:cockerels?|pullets?|chicks?)$/u.test(word))
  const last = tokens.findLastIndex(({ at }) => at < saidOf.end)
  const next = tokens.slice(last + 1, last + 3)
  const hatched = tokens.some(
    ({ type, word }) => type === 'chick' || /\b(?:hatch|hatched|turned|whose|him|his)\b/u.test(word),
  )
  const bare = saidOf.parts.every(({ type }) => type === 'trait') || (sex === 'M' && next[0]?.type === 'chick')
  return sex === undefined || bare || (young && (hatched || next.some(({ type }) => type === 'outOf')))
}

/** "a RIR chick": its mother is one, where the fathers are told beside. */
function isOfChick({ saidOf }: Bird, { tokens }: Reading): boolean {
  const last = tokens.findLastIndex(({ at }) => at < saidOf.end)
  return tokens[last + 1]?.type === 'chick' && saidOf.parts.some(({ type }) => type === 'breed' || type === 'family')
}

/** "either Dorking or Silkie jumped the fence": one of these is the father. */
const isEither = ({ words, scene }: Reading): boolean =>
  words.includes('either') && scene.birds.filter(({ named, sex }) => named && sex !== 'F').length > 1
/** "chick has muffs, mum is EE or RIR": one of these is the parent that is told. */
const orOther =
  /\b(mum|mom|mother|dam|hen|dad|father|daddy|sire|roo|cock) (?:is|was|either|could be|must be|might be)\b(?: \w+){1,5} or\b/u

const isPullet = ({ saidOf }: Bird): boolean => saidOf.parts.some(({ word }) => /^pullets?$/u.test(word))

/** Candidates: birds told, by sex; those of no told sex may be either, and count as the sex that is in doubt. */
function candidates(reading: Reading): { readonly sires: readonly Bird[]; readonly dams: readonly Bird[] } {
  const { scene } = reading
  const areFathers = ({ by }: (typeof scene.matings)[number]): boolean =>
    by !== 'sex' && reading.tokens.some((token) => token.type === 'cock' && token.parent && token.many) // "dads: A + B"
  const fathers = scene.matings.filter(areFathers).flatMap(({ sires, dams }) => [...sires, ...dams])
  const rivals = scene.birds.some(({ sex, named }) => named && sex === 'M')
  const mated = {
    sires: [...fathers, ...scene.matings.filter((mating) => !areFathers(mating)).flatMap(({ sires }) => sires)].filter(
      (bird) => !rivals || !isChickItself(bird, reading),
    ),
    dams: scene.matings.filter((mating) => !areFathers(mating)).flatMap(({ dams }) => dams),
  }
  const solid = scene.birds.filter(
    (bird) => (isSolid(bird) || (bird.sex !== undefined && bird.named)) && !isChickItself(bird, reading),
  )
  const named = solid.filter((bird) => !(isHybrid(bird) && bird.sex === undefined))
  const males = [...mated.sires, ...named.filter(({ sex }) => sex === 'M')]
  const ofChick = isEither(reading) ? named.filter((bird) => bird.sex === undefined && isOfChick(bird, reading)) : []
  const females = [...mated.dams, ...named.filter(({ sex }) => sex === 'F'), ...ofChick]
  const unsexed = named.filter((bird) => bird.sex === undefined && !ofChick.includes(bird))
  // "who fathered my barred pullet, Buff Orp or Barred Rock. mum RIR"
  const fathered = /\bwho (?:fathered|sired)\b|\bwhos the (?:dad|daddy|father|sire)\b/u.test(reading.words.join(' '))
  const isMother = ({ saidOf }: Bird): boolean =>
    saidOf.parts.some(({ type, word }) => (type === 'hen' || type === 'kin') && !/^pullets?$/u.test(word))
  if (males.length === 0 && fathered && females.some(isMother))
    return {
      sires: [...females.filter((bird) => !isMother(bird) && !isPullet(bird)), ...unsexed].filter(
        ({ named: told }) => told,
      ),
      dams: females.filter(isMother),
    }
  const others = males.length > 0 ? unsexed.filter((bird) => isOtherThan(bird, reading)) : []
  const open = unsexed.filter((bird) => !others.includes(bird))
  const sires =
    males.length === 0 && females.length > 0 ? open : males.length === 0 && reading.has('father') ? open : males
  const dams = females.length === 0 && males.length > 0 ? open : females
  return {
    sires: [...sires, ...others].filter(({ named: told }) => told),
    dams: dams.filter(({ named: told }) => told),
  }
}

const eggOf = ({ scene }: Reading): string | undefined =>
  scene.goals.find((goal) => goal.endsWith('-eggs'))?.replace('-eggs', '')

/** "can I pull the boys out early": a spot may be a look of the chick, these words are none. */
const asksSexes = ({ tokens }: Reading): boolean =>
  tokens.some((token) => token.type === 'aspect' && token.aspect === 'sexing' && !/dot|spot/u.test(token.word))

/** "A and B, A is the dad": told, and no question. */
const isToldFather = ({ scene, asks }: Reading): boolean =>
  !asks &&
  scene.told.some(({ who, is, not }) => who.named && !not && is.every(({ named, sex }) => !named && sex !== undefined))

/** Something is said of how the chick looks. */
const described = (reading: Reading): boolean =>
  looksIn(reading).length > 0 || reading.tokens.some(({ type }) => type === 'trait')

export const readParents: Reader = (reading) => {
  const { has, tokens } = reading
  const chick = tokens.some(({ type }) => type === 'chick') || has('hatch')
  const { sires, dams } = candidates(reading)
  if (isFatherToBe(reading) && reading.scene.tallies.length === 0) return undefined
  if (asksWay(reading) && chicksIn(reading).length === 0) return undefined
  const rivals =
    has('photo') && sires.length > 1 && dams.length === 1 && /\b(?:which|who|whose)\b/u.test(reading.words.join(' '))
  const other = chick && described(reading) && orOther.test(reading.words.join(' '))
  const doubt = has('father') || rivals || other || (has('hatchedWhat') && (chick || sires.length + dams.length > 0))
  const several =
    chick && described(reading) && !asksSexes(reading) && sires.length + dams.length > 2 && !isToldPair(reading)
  const whichHen =
    chick &&
    has('outcome') &&
    !reading.scene.aspects.includes('sexing') &&
    reading.scene.wanted.some(({ firm, for: birds }) => firm && birds.length === 0)
  const lineUp =
    several ||
    (chick && described(reading) && isEither(reading) && !isToldPair(reading)) ||
    whichHen ||
    (chick &&
      sires.length > 1 &&
      ((tokens.some((token) => token.type === 'cock' && token.parent) && !isToldPair(reading)) ||
        looksIn(reading).length > 0 ||
        tokens.some(({ type }) => type === 'trait')))
  if (!doubt && (!lineUp || (has('carry') && has('odds')))) return undefined
  if ((isToldPair(reading) || (asksSexes(reading) && dams.length > 0)) && sires.length === 1 && !has('father'))
    return undefined
  const chicks = chicksIn(reading)
  if (sires.length + dams.length === 0 && chicks.length === 0) return undefined
  if (sires.length * dams.length === 1 && chicks.length === 0 && reading.scene.aspects.includes('sexing'))
    return undefined // "the ones whose eggs I set": nothing to choose
  if (sires.length * dams.length === 1 && chicks.length === 0 && isToldFather(reading)) return undefined
  if (sires.length + dams.length === 0 && !chick)
    return { kind: 'ask-back', missing: 'birds', options: [], birds: [], ...commonOf(reading) }
  if (
    !has('father') &&
    !lineUp &&
    !rivals &&
    (chicks.length === 0 || sires.length * dams.length === 0) &&
    !(chick && chicks.length > 0)
  )
    return undefined
  const egg = eggOf(reading)
  return {
    kind: 'parents',
    chicks,
    sires: refsOf(sires).slice(0, 8),
    dams: refsOf(dams).slice(0, 8),
    ...(has('photo') ? { unseen: true } : {}),
    ...(egg === undefined ? {} : { egg }),
    ...commonOf(reading, [...sires, ...dams]),
  }
}
