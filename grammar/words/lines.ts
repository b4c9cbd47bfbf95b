// grammar/words/lines.ts: what keepers call a strain of a breed, and which lines of the catalogue each may stand for.

/** Words of a line, parted by commas. */
export const lineWords = {
  production:
    'production, prod, production line, production type, production bred, production strain, production quality, commercial, commercial line, commercial type, high production, layer strain, layer line, laying strain, laying line, laying type, egg line, egg strain, layer type, industrial, high laying, heavy laying, egg farm, battery, ex battery, ex bat',
  hatchery:
    'hatchery, hatchery quality, hatchery stock, hatchery line, hatchery type, hatchery strain, hatchery bred, feedstore, feed store, farm store, store bought, mail order, feed store bought, feedstore quality, farm shop, pet quality',
  utility:
    'utility, utility line, utility type, utility strain, utility bred, working line, working strain, dual purpose line, backyard line',
  heritage:
    'heritage, heritage line, heritage type, heritage quality, heritage bred, heritage strain, old type, old line, old lines, old style, old fashioned, traditional, oldschool, old school, foundation line',
  exhibition:
    'exhibition, exhibition line, exhibition type, exhibition quality, exhibition stock, exhibition bred, exhibition strain, show, show line, show lines, show quality, show type, show stock, show bred, show strain, show bird, show birds, sq, shows quality, standard bred, breeder quality, breeder stock, breeder, from a breeder, sop, showline, showquality, standard of perfection, fancy, show winning, champion line',
  'fine-barred':
    'fine barred, fine barring, finely barred, narrow barred, sharp barred, sharp barring, tight barring, crisp barred, crisp barring, fine bars, tight bars',
  'open-barred':
    'open barred, open barring, coarse barred, coarse barring, wide barred, wide barring, blurry barred, fuzzy barred, smudgy barred',
  'dark-line':
    'dark line, dark line cockerel, dark line cockerels, cockerel line, cockerel breeder, cockerel bred, cock breeder, dark barred',
  'light-line':
    'light line, light line pullet, light line pullets, pullet line, pullet breeder, pullet bred, hen breeder, light barred',
  'rose-comb': 'rose comb, rosecomb, rose combed, rc, rosecombed',
  'single-comb': 'single comb, singlecomb, single combed, sc',
  english: 'english, british, uk line, uk',
  german: 'german, deutsch, deutsche',
  french: 'french, francais',
  american: 'american, us line, usa line, apa',
  australian: 'australian, aussie line, aussie type, australian type, aussie strain, oz line, australian line',
  dutch: 'dutch',
  layer: 'layer dam, layer bred, egg bred',
  meat: 'meat line, meat type, meat strain, meat dam, broiler line, meat bred, fryer, fryer type',
  organic: 'organic, organic line, organic type, organic strain, organic meat line, organic meat type, organic meat',
  bantam: 'bantam, bantams, banty, banties, bantie, mini, miniature, bantum, bantums',
  'large-fowl': 'large fowl, lf, standard size, standard sized, full size, fullsize, large',
} as const
export type SaidLine = keyof typeof lineWords

/** For each said line, the words by which the catalogue finds it, tried in order. */
export const lineSought: Readonly<Record<SaidLine, readonly string[]>> = {
  production: ['production'],
  hatchery: ['hatchery'],
  utility: ['utility'],
  heritage: ['heritage'],
  exhibition: ['exhibition'],
  'fine-barred': ['fine barred', 'exhibition'],
  'open-barred': ['open barred', 'production'],
  'dark-line': ['dark line', 'exhibition'],
  'light-line': ['light line', 'exhibition'],
  'rose-comb': ['rose comb'],
  'single-comb': [],
  english: ['english', 'uk', 'british', 'exhibition'],
  german: ['german'],
  french: ['french'],
  american: ['american'],
  australian: ['australian'],
  dutch: ['dutch'],
  layer: ['layer line', 'production'],
  meat: ['meat line', 'fryer type', 'meat type'],
  organic: ['organic'],
  bantam: ['bantam'],
  'large-fowl': ['large fowl'],
}
