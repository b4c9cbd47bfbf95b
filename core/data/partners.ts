// core/data/partners.ts: how easily birds are found, which birds show what does not work, and what a goal asks of a line. Data only.
import type { Goal } from '../question.ts'

/** 3: nearly every seller has it; 2: common among breeders. Others are harder to come by. Judgement of keepers, no figures. */
export const findable: Readonly<Record<string, number>> = {
  'Rhode Island Red': 3,
  'Barred Plymouth Rock': 3,
  'New Hampshire': 3,
  'Buff Orpington': 3,
  'Black Australorp': 3,
  'White Leghorn': 3,
  'Light Sussex': 3,
  Delaware: 3,
  'Silver Laced Wyandotte': 3,
  'Golden Laced Wyandotte': 3,
  'Easter Egger': 2,
  'Rhode Island White': 2,
  'White Plymouth Rock': 2,
  'Columbian Wyandotte': 2,
  'Light Brahma': 2,
  'Buff Brahma': 2,
  Dominique: 2.6,
  'Cuckoo Marans': 2.8,
  'Black Copper Marans': 3,
  Welsummer: 3,
  'Cream Legbar': 2.6,
  'Black Ameraucana': 2.4,
  'Blue Ameraucana': 2,
  'Brown Leghorn': 2.4,
  'Speckled Sussex': 2,
  Barnevelder: 2,
  'Black Jersey Giant': 2,
  'Dark Cornish': 2,
  'Columbian Plymouth Rock': 1.8,
  'Buff Plymouth Rock': 1.6,
  'Partridge Plymouth Rock': 1.6,
  'Salmon Faverolles': 2,
  'Black Orpington': 2,
  'Blue Orpington': 1.8,
  'Lavender Orpington': 2,
  'Chocolate Orpington': 1.8,
  'White Silkie': 2,
  'Black Silkie': 2,
  Bielefelder: 2,
  'Naked Neck': 2,
  'Egyptian Fayoumi': 1.6,
  'White Wyandotte': 1.6,
  'Blue Laced Red Wyandotte': 2,
  'California Gray': 1.8,
  Araucana: 1.6,
  Ancona: 1.6,
  Buckeye: 1.6,
}

/** Bred for the table: broad-breasted, more meat on the same weight. Judgement of keepers, no figures. */
export const tableBred: ReadonlySet<string> = new Set([
  'Dark Cornish',
  'White Cornish',
  'Ixworth',
  'White Bresse',
  'Silver Grey Dorking',
  'Red Dorking',
  'White Plymouth Rock',
])

/** Birds that keepers often try; those that do not work for the goal are named with the reason. */
export const oftenTried = {
  F: ['White Leghorn', 'Black Australorp', 'Buff Orpington', 'Rhode Island Red'],
  M: ['Barred Plymouth Rock', 'Light Sussex', 'Black Australorp', 'White Leghorn', 'Rhode Island Red', 'Cream Legbar'],
} as const

/** Which line of a candidate is taken where the goal depends on it; absent = the usual line. */
export const lineForGoal: Partial<Record<Goal, string>> = {
  eggs: 'production',
  meat: 'meat',
  show: 'exhibition',
}

/** Where two copies harm: the mate to leave alone, the safe one, and why. */
export const harmful = {
  Cp: {
    allele: 'Cp',
    never: 'Japanese bantam (short leg)',
    safe: 'Japanese bantam (long leg)',
    why: 'two short-legged parents lose a quarter of the embryos',
    safely: 'long legs: half the chicks short-legged, none lost',
  },
  Et: {
    allele: 'Et',
    never: 'Tufted Araucana',
    safe: 'Clean-faced Araucana',
    why: 'two tufted parents lose a quarter of the chicks in the shell, and more beside',
    safely: 'clean-faced: no chick gets two copies of the tufts; take a tailed bird for better fertility',
  },
  F: {
    allele: 'F',
    never: 'Frizzle',
    safe: '',
    why: 'two frizzles give a quarter with bare, brittle feather',
    safely: '', // any smooth bird is
  },
} as const
