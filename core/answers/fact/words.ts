// core/answers/fact/words.ts: what an allele makes of a bird, in a few plain words. Data only.

/** Grounds and whites: after "it is …". */
export const groundWords: Readonly<Record<string, string>> = {
  E: 'black all over',
  'E^R': 'birchen',
  'e^Wh': 'wheaten',
  'e^y': 'wheaten',
  'e+': 'wild-type (black-red)',
  'e^b': 'brown (partridge)',
  'e^s': 'speckled',
  'e^bc': 'buttercup',
}

/** Genes that shape colour on the ground: what a bird with the allele is said to carry. */
export const colourWords: Readonly<Record<string, string>> = {
  Co: 'columbian',
  Db: 'dark brown',
  Ml: 'melanotic',
  Pg: 'the pattern gene',
  Cha: 'charcoal',
  Mh: 'mahogany',
  Di: 'dilute',
  cb: 'champagne blond',
  ig: 'cream',
  Bl: 'blue',
  lav: 'lavender',
  choc: 'chocolate',
  mo: 'mottling',
  I: 'dominant white',
  'I^D': 'dun',
  c: 'recessive white',
}

/** Form: what a keeper sees of it. */
export const formWords: Readonly<Record<string, string>> = {
  Fm: 'dark skin',
  Cr: 'a crest',
  Mb: 'muffs',
  Et: 'ear tufts',
  Na: 'a bare neck',
  F: 'frizzled feather',
  h: 'silkie feather',
  Hf: 'hen-feathered cocks',
  'Pti-1^B': 'heavily feathered feet',
  'Pti-1^L': 'lightly feathered feet',
  Po: 'five toes',
  Rp: 'no tail',
  Cp: 'short legs',
}

/** How surely a record may be worded: "is", "is usually", "is probably". */
export const surely = { high: 'is', medium: 'is usually', low: 'is probably' } as const
export const certainty = { high: 'sure', medium: 'usual', low: 'doubtful' } as const
