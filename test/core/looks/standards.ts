// test/core/looks/standards.ts: what each variety looks like by its standard, entered apart from the rules. Data only.
// From memory of the British, American and European standards unless a check names a source that was read.

/** One colour of the standards: the patterns of cock and hen, the tints allowed, the down by colour. */
export type Colour = {
  readonly cock: readonly string[]
  readonly hen: readonly string[]
  readonly black: readonly string[]
  readonly red: readonly string[]
  readonly down: readonly string[]
  readonly barred?: true
  readonly mottled?: true
  readonly white?: true
}

const anyPattern = (pattern: string) => ({ cock: [pattern], hen: [pattern] })
const silver = ['silver']
const gold = ['gold', 'red', 'mahogany']
const red = ['red', 'mahogany']
const darkDown = ['black']
const stripedDown = ['brown', 'golden brown']
const stripedGrey = ['silver grey', 'grey-brown']
const brownDown = ['brown', 'golden brown', 'dark brown']
const paleGold = ['buff', 'red-buff', 'golden brown']
const paleSilver = ['pale yellow', 'cream']

const solid = { ...anyPattern('solid'), red: ['none'] }
const columbian = { ...anyPattern('columbian'), black: ['black'] }
const blackRed = { cock: ['black-breasted'], hen: ['stippled'], black: ['black'] }
const wheaten = { cock: ['black-breasted'], hen: ['wheaten'], red: gold, down: paleGold }
const birchen = { ...anyPattern('birchen'), red: gold }
const laced = anyPattern('single laced')
const doubleLaced = { cock: ['black-breasted'], hen: ['double laced'], black: ['black'] }
const pencilled = { cock: ['black-breasted'], hen: ['pencilled'], black: ['black'] }

export const colours = {
  black: { ...solid, black: ['black'], down: darkDown },
  white: {
    ...anyPattern('white'),
    black: ['none', 'white', 'white with dark flecks'],
    red: ['none', 'white', 'brassy silver'],
    down: ['white', 'pale yellow', 'cream'],
    white: true,
  },
  paint: {
    ...anyPattern('white'),
    black: ['white with dark flecks'],
    red: ['none'],
    down: ['pale yellow'],
    white: true,
  },
  blue: { ...solid, black: ['blue'], down: ['blue-grey'] },
  splash: { ...solid, black: ['splash'], down: ['smoky white'] },
  lavender: { ...solid, black: ['lavender'], down: ['lavender grey'] },
  chocolate: { ...solid, black: ['chocolate'], down: ['chocolate'] },
  mauve: { ...solid, black: ['mauve'], down: ['mauve'] },
  barred: { ...solid, black: ['black'], down: darkDown, barred: true },
  mottled: { ...solid, black: ['black'], down: darkDown, mottled: true },
  'blue laced slate': { ...laced, black: ['blue'], red: ['none'], down: ['blue-grey'] },

  'black-tailed red': {
    cock: ['black-tailed', 'columbian'],
    hen: ['black-tailed', 'columbian'],
    black: ['black'],
    red,
    down: paleGold,
  },
  'black-tailed buff': {
    cock: ['black-tailed', 'columbian'],
    hen: ['black-tailed', 'columbian'],
    black: ['black'],
    red: ['gold', 'buff'],
    down: paleGold,
  },
  'light columbian': { ...columbian, red: silver, down: paleSilver },
  'buff columbian': { ...columbian, red: ['gold', 'buff'], down: paleGold },
  'barred columbian': { ...columbian, red: silver, down: paleSilver, barred: true },
  'lavender columbian': { ...columbian, black: ['lavender'], red: silver, down: paleSilver },
  buff: { ...anyPattern('self'), black: ['none'], red: ['buff'], down: ['buff', 'golden brown'] },
  'barred buff': {
    ...anyPattern('self'),
    black: ['none'],
    red: ['buff'],
    down: ['buff', 'cream', 'golden brown'], // the cock chick is the paler
    barred: true,
  },
  'barred red': {
    cock: ['black-tailed', 'columbian'],
    hen: ['black-tailed', 'columbian'],
    black: ['black'],
    red: gold,
    down: paleGold,
    barred: true,
  },
  speckled: {
    cock: ['black-tailed', 'columbian'],
    hen: ['black-tailed', 'columbian'],
    black: ['black'],
    red,
    down: paleGold,
    mottled: true,
  },
  'mille fleur': { ...columbian, red: ['gold', 'buff'], down: paleGold, mottled: true },
  porcelain: {
    ...columbian,
    black: ['lavender'],
    red: ['straw', 'buff'],
    down: ['cream', 'grey-brown'],
    mottled: true,
  },
  'silver belted': { ...anyPattern('belted'), black: ['black'], red: silver, down: paleSilver },
  'gold belted': { ...anyPattern('belted'), black: ['black'], red: ['gold', 'buff'], down: paleGold },

  'black-red': { ...blackRed, red: gold, down: stripedDown },
  'spangled black-red': { ...blackRed, red: gold, down: stripedDown, mottled: true },
  'silver duckwing': { ...blackRed, red: silver, down: stripedGrey },
  isabel: { ...blackRed, black: ['lavender'], red: ['straw'], down: ['grey-brown'] },
  crele: { ...blackRed, red: gold, down: stripedDown, barred: true },
  'silver crele': { ...blackRed, red: silver, down: stripedGrey, barred: true },
  'cream crele': { ...blackRed, red: ['cream'], down: stripedGrey, barred: true },
  pyle: { ...blackRed, black: ['white', 'white with dark flecks'], red: gold, down: ['cream'] },
  wheaten: { ...wheaten, black: ['black'] },
  'blue wheaten': { ...wheaten, black: ['blue'] },
  'splash wheaten': { ...wheaten, black: ['splash'] },
  salmon: {
    cock: ['black-breasted'],
    hen: ['wheaten'],
    black: ['black'],
    red: ['silver', 'salmon'],
    down: ['pale yellow'],
  },
  buttercup: { cock: ['black-breasted'], hen: ['stippled'], black: ['black'], red: gold, down: ['brown'] },

  partridge: { ...pencilled, red: gold, down: brownDown },
  'loose partridge': { ...pencilled, hen: ['pencilled', 'partridge'], red: gold, down: brownDown },
  'silver pencilled': { ...pencilled, red: silver, down: stripedGrey },
  'double laced': { ...doubleLaced, red: gold, down: brownDown },
  'silver double laced': { ...doubleLaced, red: silver, down: stripedGrey },
  'blue double laced': { ...doubleLaced, black: ['blue'], red: gold, down: brownDown },
  'barred double laced': { ...doubleLaced, red: gold, down: brownDown, barred: true },
  'white double laced': { ...doubleLaced, black: ['white', 'white with dark flecks'], red: gold, down: ['cream'] },
  'gold laced': { ...laced, black: ['black'], red: gold, down: brownDown },
  'silver laced': { ...laced, black: ['black'], red: silver, down: [...stripedGrey, 'dark brown'] },
  'barred silver laced': {
    ...laced,
    black: ['black'],
    red: silver,
    down: [...stripedGrey, 'dark brown'],
    barred: true,
  },
  'red laced blue': { ...laced, black: ['blue'], red, down: [...brownDown, 'blue-grey'] },
  'red laced black': { ...laced, black: ['black'], red, down: brownDown },
  'red laced splash': { ...laced, black: ['splash'], red, down: [...brownDown, 'smoky white'] },
  'buff laced': { ...laced, black: ['white', 'white with dark flecks'], red: ['gold', 'buff'], down: ['cream'] },
  'gold spangled': { ...anyPattern('spangled'), black: ['black'], red: gold, down: ['golden brown'] },
  'silver spangled': { ...anyPattern('spangled'), black: ['black'], red: silver, down: ['silver grey'] },
  'gold barred across': { ...anyPattern('autosomal barred'), black: ['black'], red: gold, down: ['golden brown'] },
  'silver barred across': { ...anyPattern('autosomal barred'), black: ['black'], red: silver, down: ['silver grey'] },
  'gold barred twice': {
    ...anyPattern('autosomal barred'),
    black: ['black'],
    red: gold,
    down: ['golden brown'],
    barred: true,
  },

  copper: { ...birchen, black: ['black'], down: darkDown },
  'silver birchen': { ...birchen, black: ['black'], red: silver, down: darkDown },
  'blue copper': { ...birchen, black: ['blue'], down: ['blue-grey'] },
  'splash copper': { ...birchen, black: ['splash'], down: ['smoky white'] },
  'barred copper': { ...birchen, black: ['black'], down: darkDown, barred: true },
} as const satisfies Record<string, Colour>

export type ColourName = keyof typeof colours
export type Extra =
  | 'crest'
  | 'muffs'
  | 'feathered'
  | 'five toes'
  | 'rumpless'
  | 'tufts'
  | 'short legs'
  | 'silkie'
  | 'naked neck'
  | 'hen-feathered'
type Standard = {
  readonly colour: ColourName
  readonly comb: 'single' | 'rose' | 'pea' | 'walnut' | 'V' | 'buttercup'
  readonly shank: 'yellow' | 'white' | 'slate' | 'willow' | 'dark' | 'any'
  readonly extras: readonly Extra[]
  /** With or without, both of the standard. */
  readonly either?: Extra
}

const like = (
  colour: ColourName,
  comb: Standard['comb'],
  shank: Standard['shank'],
  ...extras: readonly Extra[]
): Standard => ({ colour, comb, shank, extras })

const silkie = (colour: ColourName): Standard => ({
  ...like(colour, 'walnut', 'dark', 'crest', 'feathered', 'five toes', 'silkie'),
  either: 'muffs',
})
const pekin = (colour: ColourName) => like(colour, 'single', 'yellow', 'feathered')
const ameraucana = (colour: ColourName) => like(colour, 'pea', 'slate', 'muffs')

/** By canonical name. Shank `dark` = black skin; comb `walnut` also for cushion and strawberry combs. */
export const standards: Readonly<Record<string, Standard>> = {
  'Rhode Island Red': like('black-tailed red', 'single', 'yellow'),
  'Rhode Island White': like('white', 'rose', 'yellow'),
  'New Hampshire': like('black-tailed red', 'single', 'yellow'),
  Delaware: like('barred columbian', 'single', 'yellow'),
  Buckeye: like('black-tailed red', 'pea', 'yellow'),

  'Barred Plymouth Rock': like('barred', 'single', 'yellow'),
  'White Plymouth Rock': like('white', 'single', 'yellow'),
  'Buff Plymouth Rock': like('buff', 'single', 'yellow'),
  'Columbian Plymouth Rock': like('light columbian', 'single', 'yellow'),
  'Partridge Plymouth Rock': like('partridge', 'single', 'yellow'),
  'Silver Pencilled Plymouth Rock': like('silver pencilled', 'single', 'yellow'),
  'Black Plymouth Rock': like('black', 'single', 'yellow'),
  'Blue Plymouth Rock': like('blue', 'single', 'yellow'),

  Dominique: like('barred', 'rose', 'yellow'),
  'Black Jersey Giant': like('black', 'single', 'willow'),
  'Blue Jersey Giant': like('blue', 'single', 'willow'),
  'Splash Jersey Giant': like('splash', 'single', 'willow'),
  'White Jersey Giant': like('white', 'single', 'willow'),
  'Black Java': like('black', 'single', 'willow'),
  'Mottled Java': like('mottled', 'single', 'any'),
  'White Chantecler': like('white', 'walnut', 'yellow'),
  'Partridge Chantecler': like('partridge', 'walnut', 'yellow'),
  'Buff Chantecler': like('buff', 'walnut', 'yellow'),
  'California Gray': like('barred', 'single', 'yellow'),
  'Iowa Blue': like('silver birchen', 'single', 'any'),
  'Barred Holland': like('barred', 'single', 'yellow'),
  'Holland White': like('white', 'single', 'yellow'),

  'Light Brahma': like('light columbian', 'pea', 'yellow', 'feathered'),
  'Dark Brahma': like('silver pencilled', 'pea', 'yellow', 'feathered'),
  'Buff Brahma': like('buff columbian', 'pea', 'yellow', 'feathered'),
  'Buff Columbian Brahma': like('buff columbian', 'pea', 'yellow', 'feathered'),
  'Gold Partridge Brahma': like('partridge', 'pea', 'yellow', 'feathered'),
  'Black Brahma': like('black', 'pea', 'yellow', 'feathered'),
  'Blue Brahma': like('blue', 'pea', 'yellow', 'feathered'),
  'Black Cochin': like('black', 'single', 'any', 'feathered'),
  'Buff Cochin': like('buff', 'single', 'yellow', 'feathered'),
  'Blue Cochin': like('blue', 'single', 'any', 'feathered'),
  'White Cochin': like('white', 'single', 'yellow', 'feathered'),
  'Partridge Cochin': like('partridge', 'single', 'yellow', 'feathered'),
  'Splash Cochin': like('splash', 'single', 'any', 'feathered'),
  'Mottled Cochin': like('mottled', 'single', 'any', 'feathered'),
  'Barred Cochin': like('barred', 'single', 'any', 'feathered'),
  'Lavender Cochin': like('lavender', 'single', 'any', 'feathered'),
  'Golden Laced Cochin': like('gold laced', 'single', 'yellow', 'feathered'),
  'Silver Laced Cochin': like('silver laced', 'single', 'yellow', 'feathered'),
  'Croad Langshan': like('black', 'single', 'slate', 'feathered'),
  'Black Langshan': like('black', 'single', 'slate', 'feathered'),
  'Blue Langshan': like('blue', 'single', 'slate', 'feathered'),
  'White Langshan': like('white', 'single', 'slate', 'feathered'),

  'Cream Legbar': like('cream crele', 'single', 'yellow', 'crest'),
  'Gold Legbar': like('crele', 'single', 'yellow'),
  'Silver Legbar': like('silver crele', 'single', 'yellow'),
  Rhodebar: like('barred red', 'single', 'yellow'),
  Welbar: like('crele', 'single', 'yellow'),
  Bielefelder: like('crele', 'single', 'yellow'),
  'Silver Bielefelder': like('silver crele', 'single', 'yellow'),
  Buffbar: like('barred buff', 'single', 'white'),
  Dorbar: like('silver crele', 'single', 'white', 'five toes'),
  Cambar: like('gold barred twice', 'single', 'any'),
  Wybar: like('barred silver laced', 'rose', 'yellow'),
  Brockbar: like('barred buff', 'single', 'yellow'),
  Barnebar: like('barred double laced', 'single', 'yellow'),
  Polbar: like('crele', 'single', 'yellow'),

  'Black Pekin bantam': pekin('black'),
  'Buff Pekin bantam': pekin('buff'),
  'Blue Pekin bantam': pekin('blue'),
  'White Pekin bantam': pekin('white'),
  'Partridge Pekin bantam': pekin('partridge'),
  'Mottled Pekin bantam': pekin('mottled'),
  'Lavender Pekin bantam': pekin('lavender'),
  'Golden Sebright': like('gold laced', 'rose', 'slate', 'hen-feathered'),
  'Silver Sebright': like('silver laced', 'rose', 'slate', 'hen-feathered'),
  "Mille Fleur d'Uccle": like('mille fleur', 'single', 'any', 'muffs', 'feathered'),
  "Porcelain d'Uccle": like('porcelain', 'single', 'any', 'muffs', 'feathered'),
  'Black Rosecomb bantam': like('black', 'rose', 'slate'),
  'Gold Dutch bantam': like('black-red', 'single', 'slate'),
  Nankin: like('black-tailed buff', 'rose', 'any'),

  'Black Ameraucana': ameraucana('black'),
  'Blue Ameraucana': ameraucana('blue'),
  'Wheaten Ameraucana': ameraucana('wheaten'),
  'Lavender Ameraucana': ameraucana('lavender'),
  'White Ameraucana': ameraucana('white'),
  'Splash Ameraucana': ameraucana('splash'),
  'Blue Wheaten Ameraucana': ameraucana('blue wheaten'),
  'Splash Wheaten Ameraucana': ameraucana('splash wheaten'),
  'Silver Ameraucana': ameraucana('silver duckwing'),
  'Buff Ameraucana': ameraucana('buff'),
  'Brown Red Ameraucana': ameraucana('copper'),
  'Lavender Araucana': like('lavender', 'pea', 'any', 'rumpless'),
  'Black Araucana': like('black', 'pea', 'any', 'rumpless'),

  'Silver Grey Dorking': like('silver duckwing', 'single', 'white', 'five toes'),
  'Red Dorking': like('black-red', 'single', 'white', 'five toes'),
  'White Dorking': like('white', 'rose', 'white', 'five toes'),
  'Scots Grey': like('barred', 'single', 'white'),
  'Scots Dumpy': like('barred', 'single', 'white', 'short legs'),
  'Old English Pheasant Fowl': like('gold spangled', 'rose', 'slate'),
  'Black Rheinländer': like('black', 'rose', 'slate'),
  'Derbyshire Redcap': like('gold spangled', 'rose', 'slate'),
  'Marsh Daisy': like('wheaten', 'rose', 'willow'),
  Ixworth: like('white', 'pea', 'white'),

  'Silver Spangled Hamburg': like('silver spangled', 'rose', 'slate'),
  'Golden Spangled Hamburg': like('gold spangled', 'rose', 'slate'),
  'Silver Pencilled Hamburg': like('silver barred across', 'rose', 'slate'),
  'Golden Pencilled Hamburg': like('gold barred across', 'rose', 'slate'),
  'Black Hamburg': like('black', 'rose', 'slate'),
  'Golden Campine': like('gold barred across', 'single', 'slate', 'hen-feathered'),
  'Silver Campine': like('silver barred across', 'single', 'slate', 'hen-feathered'),
  'Gold Brakel': like('gold barred across', 'single', 'slate'),
  'Silver Brakel': like('silver barred across', 'single', 'slate'),
  'Golden Friesian': like('gold barred across', 'single', 'slate'),
  'Silver Friesian': like('silver barred across', 'single', 'slate'),
  'Salmon Faverolles': like('salmon', 'single', 'white', 'muffs', 'feathered', 'five toes'),
  'White Faverolles': like('white', 'single', 'white', 'muffs', 'feathered', 'five toes'),
  Sulmtaler: like('wheaten', 'single', 'white', 'crest'),
  Lakenvelder: like('silver belted', 'single', 'slate'),
  Vorwerk: like('gold belted', 'single', 'slate'),
  'White Bresse': like('white', 'single', 'slate'),
  'Black Bresse': like('black', 'single', 'slate'),
  'Blue Bresse': like('blue', 'single', 'slate'),
  'La Fleche': like('black', 'V', 'slate'),
  Kraienkoppe: like('black-red', 'walnut', 'yellow'),
  'North Holland Blue': like('barred', 'single', 'white', 'feathered'),

  'White Crested Black Polish': like('black', 'V', 'slate', 'crest'),
  'White Crested Blue Polish': like('blue', 'V', 'slate', 'crest'),
  'Golden Laced Polish': like('gold laced', 'V', 'slate', 'crest'),
  'Silver Laced Polish': like('silver laced', 'V', 'slate', 'crest'),
  'Buff Laced Polish': like('buff laced', 'V', 'slate', 'crest'),
  'White Polish': like('white', 'V', 'slate', 'crest'),
  'Mottled Houdan': like('mottled', 'V', 'white', 'crest', 'muffs', 'five toes'),
  'Silver Appenzeller Spitzhauben': like('silver spangled', 'V', 'slate', 'crest'),
  'Gold Appenzeller Spitzhauben': like('gold spangled', 'V', 'slate', 'crest'),
  Crevecoeur: like('black', 'V', 'slate', 'crest', 'muffs'),
  Sultan: like('white', 'V', 'slate', 'crest', 'muffs', 'feathered', 'five toes'),

  'Cuckoo Marans': like('barred', 'single', 'white', 'feathered'),
  'Black Copper Marans': like('copper', 'single', 'any', 'feathered'),
  'Wheaten Marans': like('wheaten', 'single', 'white', 'feathered'),
  'White Marans': like('white', 'single', 'white', 'feathered'),
  'Blue Copper Marans': like('blue copper', 'single', 'any', 'feathered'),
  'Splash Copper Marans': like('splash copper', 'single', 'any', 'feathered'),
  'Black Marans': like('black', 'single', 'any', 'feathered'),
  'Blue Marans': like('blue', 'single', 'any', 'feathered'),
  'Birchen Marans': like('silver birchen', 'single', 'any', 'feathered'),
  'Golden Cuckoo Marans': like('barred copper', 'single', 'white', 'feathered'),
  Welsummer: like('black-red', 'single', 'yellow'),
  'Silver Welsummer': like('silver duckwing', 'single', 'yellow'),
  Barnevelder: like('double laced', 'single', 'yellow'),
  'Silver Barnevelder': like('silver double laced', 'single', 'yellow'),
  'Blue Barnevelder': like('blue double laced', 'single', 'yellow'),
  'Black Barnevelder': like('black', 'single', 'yellow'),
  'Crele Penedesenca': like('crele', 'single', 'any'),

  'Black-breasted Red Old English Game': like('black-red', 'single', 'any'),
  'Silver Duckwing Old English Game': like('silver duckwing', 'single', 'any'),
  'Spangled Old English Game': like('spangled black-red', 'single', 'any'),
  'Wheaten Old English Game': like('wheaten', 'single', 'any'),
  'Red Pyle Old English Game': like('pyle', 'single', 'any'),
  'Crele Old English Game': like('crele', 'single', 'any'),
  'Modern Game, black-red': like('black-red', 'single', 'any'),
  'Birchen Modern Game': like('silver birchen', 'single', 'any'),
  'White Cornish': like('white', 'pea', 'yellow'),
  'Dark Cornish': like('double laced', 'pea', 'yellow'),
  'White Laced Red Cornish': like('white double laced', 'pea', 'yellow'),
  'Buff Laced Cornish': like('white double laced', 'pea', 'yellow'),
  Malay: like('wheaten', 'pea', 'yellow'),
  Shamo: like('wheaten', 'pea', 'yellow'),
  'Black Sumatra': like('black', 'pea', 'willow'),

  'Egyptian Fayoumi': like('silver barred across', 'single', 'slate'),
  'Potchefstroom Koekoek': like('barred', 'single', 'yellow'),
  'Red Naked Neck': like('black-tailed red', 'single', 'any', 'naked neck'),
  'Black Naked Neck': like('black', 'single', 'any', 'naked neck'),
  'White Naked Neck': like('white', 'single', 'any', 'naked neck'),

  'White Leghorn': like('white', 'single', 'yellow'),
  'Brown Leghorn': like('black-red', 'single', 'yellow'),
  'Black Leghorn': like('black', 'single', 'yellow'),
  'Buff Leghorn': like('buff', 'single', 'yellow'),
  'Exchequer Leghorn': like('mottled', 'single', 'yellow'),
  'Cuckoo Leghorn': like('barred', 'single', 'yellow'),
  'Silver Leghorn': like('silver duckwing', 'single', 'yellow'),
  'Red Leghorn': like('black-tailed red', 'single', 'yellow'),
  'Isabel Leghorn': like('isabel', 'single', 'yellow'),
  'Blue Leghorn': like('blue', 'single', 'yellow'),
  'Columbian Leghorn': like('light columbian', 'single', 'yellow'),

  Ancona: like('mottled', 'single', 'yellow'),
  'Rose-comb Ancona': like('mottled', 'rose', 'yellow'),
  'Black Minorca': like('black', 'single', 'slate'),
  'White Minorca': like('white', 'single', 'white'),
  'Blue Andalusian': like('blue laced slate', 'single', 'slate'),
  'Splash Andalusian': like('splash', 'single', 'slate'),
  'Black Andalusian': like('black', 'single', 'slate'),
  'White-faced Black Spanish': like('black', 'single', 'slate'),
  'Sicilian Buttercup': like('buttercup', 'buttercup', 'willow'),
  Catalana: like('black-tailed buff', 'single', 'slate'),

  'Black Orpington': like('black', 'single', 'slate'),
  'Buff Orpington': like('buff', 'single', 'white'),
  'White Orpington': like('white', 'single', 'white'),
  'Blue Orpington': like('blue', 'single', 'slate'),
  'Splash Orpington': like('splash', 'single', 'slate'),
  'Lavender Orpington': like('lavender', 'single', 'slate'),
  'Chocolate Orpington': like('chocolate', 'single', 'slate'),
  'Cuckoo Orpington': like('barred', 'single', 'white'),
  'Jubilee Orpington': like('speckled', 'single', 'white'),
  'Red Orpington': like('black-tailed red', 'single', 'white'),
  'Lemon Cuckoo Orpington': like('barred buff', 'single', 'white'),
  'Mauve Orpington': like('mauve', 'single', 'slate'),
  'Silver Laced Orpington': like('silver laced', 'single', 'any'),
  'Golden Laced Orpington': like('gold laced', 'single', 'any'),
  'Black Australorp': like('black', 'single', 'slate'),
  'Blue Australorp': like('blue', 'single', 'slate'),
  'Splash Australorp': like('splash', 'single', 'slate'),
  'White Australorp': like('white', 'single', 'slate'),

  'White Silkie': silkie('white'),
  'Black Silkie': silkie('black'),
  'Buff Silkie': silkie('buff'),
  'Partridge Silkie': silkie('loose partridge'),
  'Blue Silkie': silkie('blue'),
  'Splash Silkie': silkie('splash'),
  'Lavender Silkie': silkie('lavender'),
  'Chocolate Silkie': silkie('chocolate'),
  'Paint Silkie': silkie('paint'),
  'Cuckoo Silkie': silkie('barred'),
  'Ayam Cemani': like('black', 'single', 'dark'),

  'Light Sussex': like('light columbian', 'single', 'white'),
  'Speckled Sussex': like('speckled', 'single', 'white'),
  'Red Sussex': like('black-tailed red', 'single', 'white'),
  'Buff Sussex': like('buff columbian', 'single', 'white'),
  'Coronation Sussex': like('lavender columbian', 'single', 'white'),
  'White Sussex': like('white', 'single', 'white'),

  'Silver Laced Wyandotte': like('silver laced', 'rose', 'yellow'),
  'Golden Laced Wyandotte': like('gold laced', 'rose', 'yellow'),
  'White Wyandotte': like('white', 'rose', 'yellow'),
  'Columbian Wyandotte': like('light columbian', 'rose', 'yellow'),
  'Blue Laced Red Wyandotte': like('red laced blue', 'rose', 'yellow'),
  'Black Laced Red Wyandotte': like('red laced black', 'rose', 'yellow'),
  'Splash Laced Red Wyandotte': like('red laced splash', 'rose', 'yellow'),
  'Partridge Wyandotte': like('partridge', 'rose', 'yellow'),
  'Silver Pencilled Wyandotte': like('silver pencilled', 'rose', 'yellow'),
  'Buff Wyandotte': like('buff', 'rose', 'yellow'),
  'Black Wyandotte': like('black', 'rose', 'yellow'),
  'Blue Wyandotte': like('blue', 'rose', 'yellow'),
  'Barred Wyandotte': like('barred', 'rose', 'yellow'),
}

/** Birds that do not breed true to one look: mixtures, hybrids, several colours under one name; or no standard is known here. */
export const noStandard: Readonly<Record<string, string>> = {
  'Silver Sussex': 'its black-grey body with pale lacing is no pattern of the books',
  'Brown Sussex': 'black-red or wheaten, the standard leaves it open',
  Brussbar: 'barred black-red or barred red, the standard leaves it open',
  'Norwegian Jaerhon': 'sexable by its down; the genes are not confirmed',
  'Black Penedesenca': 'black to copper under one name',
  'Salmon Marans': 'gold or silver under one name',
  Niederrheiner: 'lemon cuckoo by an unsettled set of genes',
  Ancobar: 'black-mottled or duckwing, no standard found',
  Dandarawi: 'sexable by its down, but not by barring; the genes are not known',
  'Japanese bantam (short leg)': 'many colours under one name',
  'Japanese bantam (long leg)': 'many colours under one name',
  Serama: 'many colours under one name',
  Araucana: 'many colours under one name',
  'Tufted Araucana': 'many colours under one name',
  'Clean-faced Araucana': 'many colours under one name',
  'Easter Egger': 'a mixture',
  'Olive Egger': 'a mixture',
  'Dark Dorking': 'silver or gold, dark by an unsettled set of genes',
  'Golden Duckwing Leghorn': 'half silver, half gold: does not breed true',
  Aseel: 'many colours under one name',
  Phoenix: 'silver or gold under one name',
  'Icelandic landrace': 'many colours under one name',
  'Swedish Flower Hen': 'many colours under one name',
  Hedemora: 'many colours under one name',
  'Golden Montazah': 'a mixture',
  'Basque hen': 'many colours under one name',
  'Naked Neck': 'many colours under one name',
  "Silverudd's Blue": 'blue, black or splash, on black or birchen',
  'Grey Silkie': 'silver partridge by an unsettled set of genes',
}
