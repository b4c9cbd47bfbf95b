// core/data/given.ts: how to say what a keeper could know of a parent and the bot does not, and how to find it out. Data only.
import type { Sex } from '../vocabulary.ts'

type Clause = { readonly M: string; readonly F: string }
type Given = {
  /** By genotype in normal form (a hen's single allele alone at Z loci): what is so, after "the cock is …" or "the hens are …". */
  readonly says: Readonly<Record<string, string>>
  readonly tell: Readonly<Record<Sex, string>>
}

const both = (text: string): Clause => ({ M: text, F: text })

export const givens: Readonly<Record<string, Given>> = {
  S: {
    says: { 'S/S': 'pure for silver', 'S/s+': 'silver hiding one copy of gold', 's+/s+': 'gold', S: 'silver', 's+': 'gold' },
    tell: {
      M: 'Look at his daughters: gold ones show that he hides gold.',
      F: 'Hatch two or three sons from a pure gold cock: pale sons mean that she is silver.',
    },
  },
  B: {
    says: { 'B/B': 'barred with two copies', 'B/b+': 'barred with one copy', 'b+/b+': 'not barred', B: 'barred', 'b+': 'not barred' },
    tell: {
      M: 'Hatch ten chicks from a hen that is not barred: a chick without bars shows that he has only one copy.',
      F: 'Hatch two or three sons from an unbarred dark cock: barred sons mean that she is barred.',
    },
  },
  E: {
    says: { 'E/E': 'pure for black', 'E^R/E^R': 'birchen', 'E/E^R': 'black over birchen' },
    tell: both('Hatch ten chicks with a red mate: all black, half black or none tells it.'),
  },
  I: {
    says: { 'I/I': 'pure for dominant white', 'I/i+': 'dominant white with one copy', 'i+/i+': 'free of dominant white' },
    tell: both('Hatch ten chicks with a black mate: all white, half white or none tells it.'),
  },
  c: {
    says: { 'c/c': 'recessive white', 'C+/c': 'carrying recessive white unseen', 'C+/C+': 'free of recessive white' },
    tell: both('Hatch chicks with a coloured mate: coloured chicks mean recessive white, white ones dominant white.'),
  },
  K: {
    says: { 'K/K': 'slow-feathering', 'K/k+': 'slow-feathering with one copy', 'k+/k+': 'fast-feathering', K: 'slow-feathering', 'k+': 'fast-feathering' },
    tell: both('Ask how their own wings looked on day one: primaries longer than coverts are fast.'),
  },
  Bl: {
    says: { 'Bl/Bl': 'splash', 'Bl/bl+': 'blue in feather', 'bl+/bl+': 'not blue' },
    tell: both('Hatch ten chicks with a black mate: all, half or none blue tells it.'),
  },
  lav: {
    says: { 'Lav+/lav': 'carrying lavender unseen', 'Lav+/Lav+': 'free of lavender', 'lav/lav': 'lavender' },
    tell: both('Mate to a lavender bird: one lavender chick proves it, seven without leave under 1 in 100.'),
  },
  choc: {
    says: { 'Choc+/choc': 'carrying chocolate unseen', 'Choc+/Choc+': 'free of chocolate', 'choc/choc': 'chocolate', 'Choc+': 'free of chocolate', choc: 'chocolate' },
    tell: { M: 'Look at his daughters: a chocolate one proves it.', F: 'She shows it or has it not.' },
  },
  mo: {
    says: { 'Mo+/mo': 'carrying mottling unseen', 'Mo+/Mo+': 'free of mottling', 'mo/mo': 'mottled' },
    tell: both('Mate to a mottled bird: one mottled chick proves it.'),
  },
  O: {
    says: { 'O/O': 'carrying two copies of blue egg', 'O/o+': 'carrying one copy of blue egg', 'o+/o+': 'without blue egg' },
    tell: {
      M: 'Ask what egg he hatched from and what his daughters or sisters lay, or have a DNA test made.',
      F: 'Look at her eggs; daughters that lay brown or white show that she has one copy only.',
    },
  },
  Fm: {
    says: { 'Fm/Fm': 'pure for dark skin', 'Fm/fm+': 'carrying one copy of dark skin', 'fm+/fm+': 'without dark skin' },
    tell: both('Look at face and skin, and at the chicks within their first days.'),
  },
  Id: {
    says: { 'Id/Id': 'pure for clear shanks', 'Id/id+': 'carrying one copy of clear shanks', 'id+/id+': 'without clear shanks', Id: 'of clear shanks', 'id+': 'without clear shanks' },
    tell: both('Look at the shanks: slate or willow means without.'),
  },
  F: {
    says: { 'F/F': 'over-frizzled (two copies)', 'F/f+': 'frizzled with one copy', 'f+/f+': 'smooth' },
    tell: both('Brittle, ragged feather means two copies.'),
  },
  Na: {
    says: { 'Na/Na': 'naked-necked with two copies', 'Na/na+': 'naked-necked with one copy', 'na+/na+': 'feathered on the neck' },
    tell: both('A tuft low on the neck means one copy, a bare neck two.'),
  },
  Cr: { says: { 'Cr/Cr': 'crested with two copies', 'Cr/cr+': 'crested with one copy', 'cr+/cr+': 'without crest' }, tell: both('Chicks without crest show a single copy.') },
  Et: { says: { 'Et/et+': 'tufted', 'et+/et+': 'clean-faced' }, tell: both('Look for tufts at the ears; one carrier in ten or so shows none.') },
  Rp: { says: { 'Rp/Rp': 'rumpless with two copies', 'Rp/rp+': 'rumpless with one copy', 'rp+/rp+': 'tailed' }, tell: both('Tailed chicks from a tailed mate show a single copy.') },
}
