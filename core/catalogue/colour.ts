// core/catalogue/colour.ts: whether the genes of a variety give the look that its colour is known by.
import { colourNamed, type Coat } from '../breeds/colours.ts'
import type { Breed } from '../breeds.ts'
import type { Look } from '../looks/look.ts'

/** 'cock: pattern birchen, wanted solid'. */
const unlike = (who: string, what: string, got: string, wanted: readonly string[]): readonly string[] =>
  wanted.includes(got) ? [] : [`${who}: ${what} ${got}, wanted ${wanted.join(' or ')}`]

function coatFaults(who: string, { plumage }: Look, coat: Coat): readonly string[] {
  if (plumage.white && coat.pattern.includes('white')) return []
  return [
    ...unlike(who, 'pattern', plumage.pattern, coat.pattern),
    ...unlike(who, 'black parts', plumage.black, coat.black),
    ...unlike(who, 'red parts', plumage.red, coat.red),
    ...unlike(who, 'barring', plumage.barring, [coat.barring ?? 'none']),
    ...unlike(who, 'mottled', String(plumage.mottled), [String(coat.mottled ?? false)]),
  ]
}

/** Where the looks of a pure cock and hen depart from the colour the record names; empty where they agree or none is named. */
export function colourFaults({ colour: id }: Breed, cock: Look, hen: Look): readonly string[] {
  const colour = id === undefined ? undefined : colourNamed(id)
  if (!colour) return []
  const chicks = [cock, hen].flatMap(({ chick }, at) => [
    ...unlike(['cock chick', 'hen chick'][at]!, 'down', chick.colour, colour.chick.colour),
    ...unlike(['cock chick', 'hen chick'][at]!, 'pattern', chick.pattern, colour.chick.pattern),
  ])
  return [...coatFaults('cock', cock, colour.cock), ...coatFaults('hen', hen, colour.hen), ...chicks]
}
