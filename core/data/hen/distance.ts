// core/data/hen/distance.ts: how far apart two breeds stand, by the groups they belong to: what their crosses gain from it. Data only.
import type { Citation } from '../../vocabulary.ts'

/** Breeds of common descent, by the family name of the catalogue. A family that is not listed stands alone. */
export const kindred: Readonly<Record<string, readonly string[]>> = {
  red: ['Rhode Island Red', 'Rhode Island White', 'New Hampshire', 'Buckeye'],
  rock: ['Plymouth Rock', 'Dominique', 'Holland', 'Iowa Blue', 'California Gray'],
  java: ['Java', 'Jersey Giant'],
  sussex: ['Sussex', 'Dorking', 'Brussbar'],
  orpington: ['Orpington', 'Australorp'],
  dutch: ['Welsummer', 'Barnevelder', 'Welbar', 'Barnebar'],
  rhine: ['Bielefelder', 'Silver Bielefelder', 'Niederrheiner', 'North Holland Blue'],
  asiatic: ['Brahma', 'Cochin'],
  blueEgg: ['Araucana', 'Ameraucana'],
  mediterranean: ['Leghorn', 'Leghorn hybrid', 'Ancona', 'Rose-comb Ancona', 'Minorca', 'Andalusian', 'Spanish', 'Buttercup', 'Catalana', 'Penedesenca'],
  spangled: ['Hamburg', 'Campine', 'Brakel', 'Friesian', 'Lakenvelder', 'Vorwerk', 'Redcap'],
  crested: ['Polish', 'Houdan', 'Appenzeller Spitzhauben', 'Crevecoeur', 'Sultan', 'La Fleche'],
  game: ['Old English Game', 'Modern Game', 'Cornish', 'Aseel', 'Malay', 'Shamo', 'Sumatra', 'Phoenix'],
  egyptian: ['Egyptian Fayoumi', 'Dandarawi', 'Golden Montazah'],
  mixed: ['described', 'Easter Egger', 'Olive Egger'],
}

/** Distance where no pair below is named. */
export const distanceOf = {
  sameLine: 0, // one strain bred on: no gain at all
  sameFamily: 0.3, // same breed, another strain or variety
  kindred: 0.5, // related heavy breeds, red x white of the same origin
  sameWeight: 1, // heavy x heavy or light x light of other origin
  heavyLight: 1.3,
  wide: 1.3, // a landrace or a bantam with anything else: the gain is doubtful twice over
  mixed: 0.8, // one side is of no breed and may hold the other already
} as const

/** Families or kindreds that share forebears although they stand apart above. */
export const kinPairs: readonly (readonly [string, string, number])[] = [
  ['Delaware', 'red', 0.5], // New Hampshire x Barred Rock
  ['Delaware', 'rock', 0.5],
  ['Rhodebar', 'red', 0.3], // named for the breed that gave the most
  ['Rhodebar', 'rock', 0.8],
  ['Legbar', 'mediterranean', 0.5],
  ['Legbar', 'rock', 0.8],
  ['Legbar', 'blueEgg', 0.8],
  ['Ancobar', 'mediterranean', 0.5],
  ['Cambar', 'spangled', 0.5],
  ['Cambar', 'rock', 0.8],
  ['Dorbar', 'sussex', 0.5],
  ['Buffbar', 'orpington', 0.5],
  ['Brockbar', 'rock', 0.5],
  ['Wybar', 'Wyandotte', 0.5],
  ['Polbar', 'crested', 0.5],
  ['Polbar', 'rock', 0.8],
  ['Welbar', 'rock', 0.8],
  ['java', 'rock', 0.5],
  ['java', 'asiatic', 0.8],
  ['java', 'Langshan', 0.8],
  ['orpington', 'Langshan', 0.5],
  ['Marans', 'Langshan', 0.8],
  ['Potchefstroom Koekoek', 'rock', 0.5],
  ['Potchefstroom Koekoek', 'orpington', 0.5],
  ['Potchefstroom Koekoek', 'mediterranean', 0.8],
  ['Wyandotte', 'asiatic', 0.8],
  ['Faverolles', 'asiatic', 0.8],
  ['dutch', 'red', 0.8],
  ['Chantecler', 'red', 0.8],
  ['Chantecler', 'rock', 0.8],
  ['Chantecler', 'Wyandotte', 0.8],
  ['Ixworth', 'sussex', 0.8],
]

export const distanceSources: readonly Citation[] = [
  { ref: 'classes of distance between breeds: judgement of the project, from breed histories as remembered', status: 'from memory' },
]
