// test/tools/crossTable/matings.ts: a wide choice of matings to read through, and their reading: breeds, cross-bred birds, genes.
import { breedNamed } from '../../../core/breeds.ts'
import { readGenotype } from '../../../core/genotype.ts'
import type { BirdRef, CrossQuestion } from '../../../core/question.ts'
import type { Sex } from '../../../core/vocabulary.ts'

/** Sire first. A cross-bred parent is written in brackets; a bird of which genes alone are told in braces, for `parentsOf`. */
export const matings = [
  // gold on silver and the other way round
  'Rhode Island Red x Light Sussex',
  'Light Sussex x Rhode Island Red',
  'New Hampshire x Rhode Island White',
  'Rhode Island Red x White Plymouth Rock',
  'Rhode Island Red x White Wyandotte',
  'Rhode Island Red x White Leghorn',
  'Buff Orpington x Light Brahma',
  'Brown Leghorn x Light Sussex',
  'Welsummer x Silver Grey Dorking',
  'Rhode Island Red x Salmon Faverolles',
  'Golden Laced Wyandotte x Silver Laced Wyandotte',
  'Rhode Island Red x Silver Laced Wyandotte',
  'Partridge Plymouth Rock x Silver Pencilled Plymouth Rock',
  'Golden Campine x Silver Campine',
  'Rhode Island Red x Egyptian Fayoumi',
  'Golden Spangled Hamburg x Silver Spangled Hamburg',
  'Wheaten Marans x Light Sussex',
  'Speckled Sussex x Light Sussex',
  // plain on barred and the other way round
  'Rhode Island Red x Barred Plymouth Rock',
  'Barred Plymouth Rock x Rhode Island Red',
  'Black Australorp x Barred Plymouth Rock',
  'New Hampshire x Delaware',
  'Black Copper Marans x Cuckoo Marans',
  'Blue Orpington x Cuckoo Marans',
  'Splash Orpington x Barred Plymouth Rock',
  'Barred Plymouth Rock x Barred Plymouth Rock',
  'White Leghorn x Barred Plymouth Rock',
  // autosexing breeds
  'Cream Legbar x Cream Legbar',
  'Bielefelder x Bielefelder',
  'Rhodebar x Rhodebar',
  'Welsummer x Cream Legbar',
  'Cream Legbar x Rhode Island Red',
  // blue, splash, lavender, chocolate, dun
  'Blue Andalusian x Blue Andalusian',
  'Lavender Orpington x Black Orpington',
  'Chocolate Orpington x Blue Orpington',
  'Chocolate Orpington x Lavender Orpington',
  'Dun bird x Black Orpington',
  'Mauve Orpington x Barred Plymouth Rock',
  // whites of all kinds
  'White Leghorn x Black Minorca',
  'White Silkie x White Leghorn',
  'White Plymouth Rock x White Leghorn',
  'Red Pyle Old English Game x Black-breasted Red Old English Game',
  'White Laced Red Cornish x Dark Cornish',
  // patterns and mottling
  'Ancona x Exchequer Leghorn',
  'Mottled Houdan x Black Minorca',
  'Buff Orpington x Buff Plymouth Rock',
  'Birchen Modern Game x Brown Leghorn',
  'Barnevelder x Welsummer',
  "Mille Fleur d'Uccle x Porcelain d'Uccle",
  // form
  'White Silkie x New Hampshire',
  'White Cornish x Golden Laced Wyandotte',
  'White Crested Black Polish x Black Minorca',
  'Frizzle x Frizzle',
  'Naked Neck x Rhode Island Red',
  'Japanese bantam (short leg) x Japanese bantam (short leg)',
  'Tufted Araucana x Black Ameraucana',
  // bred on
  '(Rhode Island Red x Light Sussex) x (Rhode Island Red x Light Sussex)',
  '(White Silkie x Black Minorca) x (White Silkie x Black Minorca)',
  'Rhode Island Red x (Rhode Island Red x Barred Plymouth Rock)',
  'Cream Legbar x (Rhode Island Red x Light Sussex)',
  'Rhode Island Red x Red sex-link',
  'Rhode Island Red x Black sex-link',
] as const

/** Where the two halves part: the first ' x ' outside brackets. */
function halves(text: string): readonly [string, string] {
  let depth = 0
  for (const [at, sign] of text.split('').entries()) {
    depth += sign === '(' ? 1 : sign === ')' ? -1 : 0
    if (depth === 0 && text.startsWith(' x ', at)) return [text.slice(0, at), text.slice(at + 3)]
  }
  throw new Error(`No mating: ${text}`)
}

function bird(text: string, sex: Sex): BirdRef {
  if (text.startsWith('(')) {
    const [sire, dam] = halves(text.slice(1, -1))
    return { cross: { sire: bird(sire, 'M'), dam: bird(dam, 'F') } }
  }
  const [name = '', genes] = text.split(/ ?\{|\}/)
  if (name !== '' && !breedNamed(name)) throw new Error(`No such bird: ${name}`)
  const told = genes === undefined ? undefined : readGenotype(genes, sex)
  if (told && !told.ok) throw new Error(`${genes}: ${JSON.stringify(told.fault)}`)
  return { ...(name === '' ? {} : { breed: name }), ...(told ? { genotype: told.value } : {}) }
}

/** The two birds of a mating so written; faults are thrown, for they are our own. */
export function parentsOf(mating: string): { readonly sire: BirdRef; readonly dam: BirdRef } {
  const [sire, dam] = halves(mating)
  return { sire: bird(sire, 'M'), dam: bird(dam, 'F') }
}

/** The plain question what this mating gives. */
export const questionOf = (mating: string): CrossQuestion => ({
  kind: 'cross',
  matings: [parentsOf(mating)],
  aspects: [],
  assumed: [],
  manner: { symbols: false, units: 'both' },
})
