// core/answers/carrier/steps.ts: the readings on a bird's offspring, mating by mating, and how far each moved the odds.
import { type Ratio, rational, toNumber } from '../../engine/num.ts'
import type { Debated } from '../../flock/debated.ts'
import type { Member } from '../../flock/member.ts'
import { mateWords, tallyWords } from '../../flock/names.ts'
import { type Weighed, weigh } from '../../flock/weigh.ts'

/** One thing that was seen, in words, and the members of the flock it was seen on. */
export type Step = { readonly says: string; readonly of: readonly string[] }

/** `factor`: how many times likelier a carrier gives this than a bird free of it; null: only a carrier does. */
export type Moved = { readonly reading: string; readonly factor: number | null }

/** The chicks of each mating of the bird, and then each named descendant of which something was read. */
export function stepsOf(debated: Debated, flock: readonly Member[], name: string): readonly Step[] {
  const descendants = descendantsOf(flock, name).filter(({ readings }) => readings.length > 0)
  const broods = Map.groupBy(
    descendants.filter(({ chicks }) => chicks !== undefined),
    ({ sire, dam }) => (isOwnYoung(sire === name ? dam : sire) ? 'own young' : `${sire}\n${dam}`),
  )
  const chicks = [...broods.values()].map((brood) => ({
    says: `${together(brood)
      .map((member) => chickWords(debated, member))
      .join(' and ')} from ${matesOf(debated, flock, brood, name)}`,
    of: brood.map((member) => member.name),
  }))
  const named = descendants
    .filter((member) => member.chicks === undefined)
    .map((member) => ({
      says: `${member.name}: ${member.readings.map(({ says }) => says).join(', ')}`,
      of: [member.name],
    }))
  return [...chicks, ...named]
}

/** Young of the bird that are its mates, told as so many. */
const isOwnYoung = (mate: string | undefined): boolean => /^(?:his|her) (?:daughter|son) \d+$/u.test(mate ?? '')

/** Tallies of several mates that look alike, as one. */
function together(brood: readonly Member[]): readonly Member[] {
  const alike = Map.groupBy(brood, ({ chicks, readings }) => `${readings[0]!.id} ${chicks?.sex} ${chicks?.look}`)
  return [...alike.values()].map(([first, ...rest]) => ({
    ...first!,
    chicks: { ...first!.chicks!, count: rest.reduce((sum, { chicks }) => sum + chicks!.count, first!.chicks!.count) },
  }))
}

/** 'a lavender hen'; '3 of his own daughters'. */
function matesOf(debated: Debated, flock: readonly Member[], brood: readonly Member[], name: string): string {
  const mates = new Set(brood.map(({ sire, dam }) => (sire === name ? dam : sire)))
  const [mate] = mates
  if (!isOwnYoung(mate)) return mateOf(debated, flock, brood[0]!, name)
  const [his, young] = mate!.split(' ')
  return mates.size === 1 ? `${his} own ${young}` : `${mates.size} of ${his} own ${young}s`
}

function descendantsOf(flock: readonly Member[], name: string): readonly Member[] {
  const found = new Set([name])
  for (const above of found)
    for (const { name: below, sire, dam } of flock) if (sire === above || dam === above) found.add(below)
  return flock.filter((member) => member.name !== name && found.has(member.name))
}

const chickWords = (debated: Debated, { chicks, readings }: Member): string =>
  tallyWords(debated, chicks!, readings[0]!.id === 'shows true')

function mateOf(debated: Debated, flock: readonly Member[], { sire, dam }: Member, name: string): string {
  const other = sire === name ? dam : dam === name ? sire : undefined
  const mate = flock.find((member) => member.name === other)
  return mate ? mateWords(debated, mate) : `${sire} and ${dam}`
}

/** The chance before the offspring, and after each step in turn. */
export function weighSteps(
  debated: Debated,
  flock: readonly Member[],
  name: string,
  steps: readonly Step[],
): readonly Weighed[] {
  return [0, ...steps.map((_, i) => i + 1)].map((seen) => {
    const unseen = new Set(steps.slice(seen).flatMap(({ of }) => of))
    const told = flock.filter(({ name, chicks }) => chicks === undefined || !unseen.has(name))
    return weigh(
      debated,
      told.map((member) => (unseen.has(member.name) ? { ...member, readings: [] } : member)),
      name,
    )
  })
}

/** Steps that say something, with the factor by which each moved the odds. */
export function movedBy(steps: readonly Step[], weighed: readonly Weighed[]): readonly Moved[] {
  return steps.flatMap(({ says }, i) => {
    const [before, after] = [weighed[i], weighed[i + 1]]
    if (before?.kind !== 'chance' || after?.kind !== 'chance') return []
    const factor = oddsRatio(before.p, after.p)
    return factor === undefined ? [] : [{ reading: says, factor }]
  })
}

/** Undefined where nothing could be moved any more. */
function oddsRatio(before: Ratio, after: Ratio): number | null | undefined {
  const free = (p: Ratio): Ratio => rational.minus(rational.one, p)
  if (rational.isZero(before) || rational.isZero(free(before))) return undefined
  if (rational.isZero(free(after))) return null
  return toNumber(rational.over(rational.times(after, free(before)), rational.times(before, free(after))))
}
