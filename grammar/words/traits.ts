// grammar/words/traits.ts: what keepers say a bird has or carries, by locus and allele. Phrases parted by commas.
import type { LocusId } from '../../core/data/loci.ts'
import type { Colour } from './colours.ts'

export type Trait = {
  readonly locus: LocusId
  readonly allele: string
  /** A bird that shows it has at least one copy, and a bird that does not has none. */
  readonly seen: boolean
  readonly said: string
}

export const traits: Readonly<Record<string, Trait>> = {
  lavender: {
    locus: 'lav',
    allele: 'lav',
    seen: false,
    said: 'lavender gene, lav gene, self blue gene, lavender allele',
  },
  chocolate: {
    locus: 'choc',
    allele: 'choc',
    seen: false,
    said: 'chocolate gene, choc gene, chocolate allele, chocolate factor',
  },
  'recessive white': {
    locus: 'c',
    allele: 'c',
    seen: false,
    said: 'recessive white, rec white, recessive white gene, white gene, white recessive, recessive whites, hidden white',
  },
  'dominant white': {
    locus: 'I',
    allele: 'I',
    seen: true,
    said: 'dominant white, dom white, dominant white gene, dominant whites',
  },
  mottling: {
    locus: 'mo',
    allele: 'mo',
    seen: false,
    said: 'mottling, mottled gene, mottle gene, mottling gene, millefleur gene, mille fleur gene',
  },
  silver: { locus: 'S', allele: 'S', seen: true, said: 'silver gene, silver allele, the silver gene, silver factor' },
  gold: { locus: 'S', allele: 's+', seen: false, said: 'gold gene, gold allele, the gold gene' },
  barring: {
    locus: 'B',
    allele: 'B',
    seen: true,
    said: 'barring, barring gene, barred gene, bar gene, the barring gene, the barred gene, barring allele, barring factor',
  },
  blue: {
    locus: 'Bl',
    allele: 'Bl',
    seen: true,
    said: 'blue gene feather, andalusian blue, blue feather gene, blue plumage gene, blue dilution',
  },
  'blue egg': {
    locus: 'O',
    allele: 'O',
    seen: false,
    said: 'blue egg gene, blue egg genes, blue eggs gene, the blue egg gene, oocyan, oocyanin, blue shell gene, blue gene, the blue gene, blue genes, egg gene, blue egg allele, blue shelled gene, green egg gene, blue laying gene, o gene, blue egg color gene, blue egg colour gene',
  },
  'lays blue': { locus: 'O', allele: 'O', seen: true, said: '' }, // told of a hen by her eggs
  'pea comb': {
    locus: 'P',
    allele: 'P',
    seen: true,
    said: 'pea comb, pea combs, pea combed, peacomb, peacombed, peacombs, triple comb',
  },
  'rose comb': { locus: 'R', allele: 'R', seen: true, said: 'rose comb gene, rose combs, rosecombs' },
  'single comb': {
    locus: 'R',
    allele: 'r+',
    seen: false,
    said: 'single comb gene, single combs, straight comb, straight combs',
  },
  frizzle: {
    locus: 'F',
    allele: 'F',
    seen: true,
    said: 'frizzle gene, frizzling, frizzling gene, frizzled gene, curly gene',
  },
  'silkie feather': {
    locus: 'h',
    allele: 'h',
    seen: false,
    said: 'silkie feather, silkie feathers, silkie feathered, silkie feathering, silkied, silkie gene, silky feather, silky feathers, silky feathered, hookless, silkie feather gene',
  },
  'naked neck': { locus: 'Na', allele: 'Na', seen: true, said: 'naked neck gene, bare neck gene, na gene, nn gene' },
  'slow feathering': {
    locus: 'K',
    allele: 'K',
    seen: true,
    said: 'slow feathering, slow feathered, slow feather, slow feathering gene, late feathering, late feathered, slow featherer, slow featherers, slow feathers',
  },
  'fast feathering': {
    locus: 'K',
    allele: 'k+',
    seen: false,
    said: 'fast feathering, fast feathered, fast feather, rapid feathering, rapid feathered, quick feathering, early feathering, fast featherers, fast featherer',
  },
  'dark skin': {
    locus: 'Fm',
    allele: 'Fm',
    seen: true,
    said: 'dark skin, black skin, fibro, fibromelanosis, fibromelanistic, black skinned, dark skinned, fm gene, hyperpigmentation',
  },
  'dark legs': {
    locus: 'Id',
    allele: 'id+',
    seen: false,
    said: 'dark legs, slate legs, dark shanks, slate shanks, willow legs, green legs, dark legged, dermal melanin',
  },
  'yellow legs': {
    locus: 'W',
    allele: 'w',
    seen: false,
    said: 'yellow legs, yellow skin, yellow legged, yellow shanks, yellow legs gene, yellow skin gene, yellow skinned',
  },
  'white legs': {
    locus: 'W',
    allele: 'W+',
    seen: true,
    said: 'white legs, white skin, white shanks, pink legs, white legged',
  },
  muffs: {
    locus: 'Mb',
    allele: 'Mb',
    seen: true,
    said: 'muffs, muff, muffed, muffs and beard, beards, muffs beard, cheeks, fluffy cheeks, chubby cheeks, beard and muffs, bearded and muffed, muffs and beards, fluffy face',
  },
  crest: {
    locus: 'Cr',
    allele: 'Cr',
    seen: true,
    said: 'mop head, mop heads, mophead, mopheads, mop top, mop tops, pom poms, pompom, pompoms, crest gene, crests, topknot, top knot, tophat, pom pom, mohawk, top hat',
  },
  'feathered legs': {
    locus: 'Pti',
    allele: 'Pti-1^B',
    seen: true,
    said: 'feathered legs, feathered feet, feather legs, feather legged, feathered shanks, leg feathers, leg feather, leg feathering, feathery feet, feathery legs, boots, booted, foot feathers, fluffy feet, fluffy footed, fluffy legs, fuzzy feet, fuzzy footed, fuzzy foot, fuzzy legs, hairy legs, hairy feet, furry feet, furry legs, feathers on feet, feathers on its feet, feathers on legs, feathers on its legs, feathers on the legs, feathers on the feet, feathers down the legs, feather footed, feather feet, feathered toes, muffed legs',
  },
  'five toes': {
    locus: 'Po',
    allele: 'Po',
    seen: true,
    said: 'how many toes, number of toes, five toes, 5 toes, extra toe, extra toes, fifth toe, 5th toe, polydactyl, polydactyly, 5 toed, five toed',
  },
  tufts: { locus: 'Et', allele: 'Et', seen: true, said: 'ear tuft gene, tuft gene, tufted gene, tufts gene' },
  rumplessness: { locus: 'Rp', allele: 'Rp', seen: true, said: 'rumpless gene, rumplessness, tailless gene' },
  'short legs': {
    locus: 'Cp',
    allele: 'Cp',
    seen: true,
    said: 'creeper gene, short leg gene, short legs gene, creeper allele',
  },
  dwarf: {
    locus: 'dw',
    allele: 'dw',
    seen: false,
    said: 'dwarf gene, dwarfism, dwarf, sex linked dwarf, dwarfing gene, mini gene',
  },
  mahogany: { locus: 'Mh', allele: 'Mh', seen: true, said: 'mahogany gene, mahogany factor' },
  columbian: { locus: 'Co', allele: 'Co', seen: true, said: 'columbian gene, columbian restriction, co gene' },
  dun: { locus: 'I', allele: 'I^D', seen: true, said: 'dun gene' },
  'hen feathering': {
    locus: 'Hf',
    allele: 'Hf',
    seen: true,
    said: 'hen feathered, hen feathering, henny feathered, henny',
  },
  cream: { locus: 'ig', allele: 'ig', seen: false, said: 'cream gene, inhibitor of gold' },
  'extended black': {
    locus: 'E',
    allele: 'E',
    seen: true,
    said: 'extended black, extended black gene, e locus black, extension gene, black gene',
  },
  birchen: { locus: 'E', allele: 'E^R', seen: true, said: 'birchen gene' },
  wheaten: { locus: 'E', allele: 'e^Wh', seen: false, said: 'wheaten gene' },
  lacing: { locus: 'Ml', allele: 'Ml', seen: true, said: 'lacing gene, melanotic, melanotic gene' },
  pattern: { locus: 'Pg', allele: 'Pg', seen: true, said: 'pattern gene' },
}

/** The trait that a colour word names where a bird is said to carry it. */
export const traitOfColour: Partial<Readonly<Record<Colour, string>>> = {
  lavender: 'lavender',
  chocolate: 'chocolate',
  white: 'recessive white',
  mottled: 'mottling',
  silver: 'silver',
  gold: 'gold',
  red: 'gold',
  barred: 'barring',
  cuckoo: 'barring',
  blue: 'blue',
  splash: 'blue',
  frizzle: 'frizzle',
  columbian: 'columbian',
  wheaten: 'wheaten',
  birchen: 'birchen',
  cream: 'cream',
  dun: 'dun',
  tufted: 'tufts',
  rumpless: 'rumplessness',
  'short legged': 'short legs',
  crested: 'crest',
  bearded: 'muffs',
  laced: 'lacing',
  black: 'extended black',
  'mille fleur': 'mottling',
}
