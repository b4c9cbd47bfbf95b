// core/catalogue.ts: the door to the catalogue for those who look after it: list, one bird, counts, and a check of a contributor's file.
import { bareNames, breedNamed, breeds, varietiesOf, type Breed } from './breeds.ts'
import { faultsBetween, readBreeds, type RowFault } from './breeds/read.ts'
import { cardOf, type Card } from './catalogue/card.ts'
import { coverage } from './catalogue/coverage.ts'
import type { Result } from './vocabulary.ts'

export { coverage }
export type { Card, RowFault }

export type Row = {
  readonly name: string
  readonly family: string
  readonly type: string
  readonly lines: readonly string[]
}

/** Birds whose name, breed or alias has the word; all of them without one. */
export function listed(word = ''): readonly Row[] {
  const sought = word.toLowerCase()
  return breeds
    .filter(({ name, family, alsoCalled }) =>
      [name, family, ...alsoCalled].some((one) => one.toLowerCase().includes(sought)),
    )
    .map(({ name, family, type, lines }) => ({ name, family, type, lines: lines.map(({ id }) => id) }))
}

export type Shown =
  | { readonly kind: 'bird'; readonly card: Card }
  | { readonly kind: 'several'; readonly names: readonly string[] }
  | { readonly kind: 'unknown'; readonly near: readonly string[] }

export function shown(name: string, line?: string): Shown {
  const breed = breedNamed(name)
  if (breed) return { kind: 'bird', card: cardOf(breed, line, true) }
  const bare = varietiesOf(name)
  if (bare) return { kind: 'several', names: bare.varieties.map((one) => one.name) }
  return {
    kind: 'unknown',
    near:
      name.length > 2
        ? listed(name.slice(0, 4))
            .map((row) => row.name)
            .slice(0, 8)
        : [],
  }
}

/** Rows that are no list are taken as one bird. */
function parsed(file: string, text: string): Result<unknown, readonly RowFault[]> {
  try {
    const json: unknown = JSON.parse(text)
    return { ok: true, value: Array.isArray(json) ? json : [json] }
  } catch (error) {
    return { ok: false, fault: [{ where: file, why: error instanceof Error ? error.message : 'not JSON' }] }
  }
}

/** A word that core/data/names.json lists for several birds cannot be one bird's own. */
const bareWords = (birds: readonly Breed[]): readonly RowFault[] =>
  birds.flatMap(({ name, alsoCalled, misspelt }) =>
    [...alsoCalled, ...misspelt]
      .filter((word) => varietiesOf(word) !== undefined)
      .map((word) => ({
        where: name,
        why: `“${word}” means several birds in core/data/names.json: leave it to that file`,
      })),
  )

/**
 * A contributor's file of birds: what the bot would say of each.
 *
 * @fault every fault with its path, a name that another bird bears included
 */
export function checkedFile(file: string, text: string): Result<readonly Card[], readonly RowFault[]> {
  const json = parsed(file, text)
  if (!json.ok) return json
  const read = readBreeds(file, json.value)
  if (!read.ok) return read
  const names = new Set(read.value.map(({ name }) => name))
  const others = breeds.filter(({ name }) => !names.has(name))
  const between = [...faultsBetween([...others, ...read.value]), ...bareWords(read.value)]
  if (between.length > 0) return { ok: false, fault: between }
  const inPlace = (name: string): boolean => breedNamed(name)?.name === name
  return { ok: true, value: read.value.map((breed) => cardOf(breed, undefined, inPlace(breed.name))) }
}

/** How many words name a bird, and how many name several. */
export const nameCounts = (): { readonly names: number; readonly bare: number } => ({
  names: breeds.reduce((sum, { alsoCalled, misspelt }) => sum + 1 + alsoCalled.length + misspelt.length, 0),
  bare: bareNames.reduce((sum, { words }) => sum + words.length, 0),
})
