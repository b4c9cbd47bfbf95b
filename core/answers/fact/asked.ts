// core/answers/fact/asked.ts: what was asked of one bird beyond its genes: eggs, shell, weight, comb, legs, temper, broodiness, hardiness, feed.
import type { Breed } from '../../breeds.ts'
import type { Hen } from '../../answer.ts'
import { henAsBred } from '../../hen/expect.ts'
import type { Aspect } from '../../question.ts'
import { lineOf } from '../../breeds.ts'

const round10 = (eggs: number): number => Math.round(eggs / 10) * 10
const pounds = (kg: number): string => (kg / 0.45359237).toFixed(1)
const weight = (kg: number): string => `${kg.toFixed(1)} kg (${pounds(kg)} lb)`

/** Eggs a year and shell; keepers' figures, so worded as such. */
export function laying(breed: Breed, line: string | undefined): string {
  const eggs = lineOf(breed, line)?.eggsFirstYear ?? breed.eggsFirstYear
  const shell = breed.shell.colour === 'unknown' ? 'eggs' : `${breed.shell.colour} eggs`
  return `Hens lay ${shell}, by keepers’ reckoning roughly ${round10(eggs.low)} to ${round10(eggs.high)} in the first year.`
}

const shell = ({ name, shell: { colour } }: Breed): string =>
  colour === 'unknown' ? '' : `${name} hens lay ${colour} eggs.`

function size({ name, weights }: Breed, line: string | undefined, breed: Breed): string {
  const told = lineOf(breed, line)
  return `${name}: cocks roughly ${weight(told?.cockKg ?? weights.cockKg)}, hens ${weight(told?.henKg ?? weights.henKg)}.`
}

const legs = ({ name, type, shank }: Breed): string =>
  type === 'described'
    ? ''
    : /^(?:any|mixed|unknown)$/u.test(shank)
      ? `${name} birds have no one leg colour, as far as the catalogue knows.`
      : `${name} legs are ${shank}, as a rule.`
const comb = ({ name, type, comb: kind }: Breed): string =>
  type === 'described'
    ? ''
    : /^(?:any|mixed)$/u.test(kind)
      ? `${name} birds have no one comb, as far as the catalogue knows.`
      : `${name} combs are ${kind}.`
const temper = ({ name, temper: kind }: Breed): string =>
  kind === 'not known' ? '' : `${name}: by keepers’ word ${kind}.`
const hardiness = ({ name, hardiness: { cold, heat } }: Breed): string =>
  `${name}: by keepers’ word hardiness to cold is ${cold}, to heat ${heat}.`

type Asked = (breed: Breed, line: string | undefined, hen: () => Hen) => string
const sentences: Partial<Readonly<Record<Aspect, Asked>>> = {
  eggs: (breed, line) => laying(breed, line),
  shell: (breed) => shell(breed),
  size: (breed, line) => size(breed, line, breed),
  comb: (breed) => comb(breed),
  legs: (breed) => legs(breed),
  temper: (breed) => temper(breed),
  hardiness: (breed) => hardiness(breed),
  broody: ({ name }, _line, hen) => `${name}: ${hen().broody.words}.`,
  feed: ({ name }, _line, hen) =>
    `A ${name} hen in lay eats perhaps ${hen().feedGramsPerDay.low} to ${hen().feedGramsPerDay.high} g a day (about ${(hen().feedGramsPerDay.likely / 453.6).toFixed(2)} lb).`,
  maturity: ({ name }, _line, hen) =>
    `${name} pullets lay their first egg at perhaps ${Math.round(hen().ageFirstEggDays.low / 7)} to ${Math.round(hen().ageFirstEggDays.high / 7)} weeks.`,
}

/** One sentence for each thing asked that the catalogue has a figure or a word for. */
export function askedOf(breed: Breed, line: string | undefined, aspects: readonly Aspect[]): readonly string[] {
  const hen = (): Hen =>
    henAsBred({ breed: breed.name, ...(line === undefined ? {} : { line }) }, [{ blue: 'no', share: 1 }])
  const wanted = aspects.includes('shell') ? aspects.filter((aspect) => aspect !== 'eggs') : aspects
  return wanted.map((aspect) => sentences[aspect]?.(breed, line, hen) ?? '').filter(Boolean)
}
