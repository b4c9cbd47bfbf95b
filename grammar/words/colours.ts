// grammar/words/colours.ts: colour and pattern words by the word the catalogue uses. Parted by commas.

export const colourWords = {
  black:
    'black, black based, solid black, blacks, blk, blck, blak, noir, noire, schwarz, schwarze, schwarzer, zwart, zwarte, negro, negra, preto, preta',
  blue: 'blue, blues, blu, bleu, bleue, blau, blaue, blauer, blauw, blauwe, azul',
  splash: 'splash, splashes, splashed, spash, splsh',
  lavender:
    'lavender, lavenders, lav, lavs, lavander, lavendar, lavendars, lavendel, lavande, lavanda, self blue, selfblue, pearl grey, perlgrau, parelgrijs',
  chocolate: 'chocolate, chocolates, choc, chocs, chocolat, choclate, choccy, schokolade, chocola, choco',
  mauve: 'mauve',
  dun: 'dun',
  khaki: 'khaki',
  white: 'white, whites, wht, whte, whit, weiss, weisse, weisser, witte, blanc, blanche, blanco, blanca',
  red: 'red, red based, reds, rd, redd, rot, rote, roter, rood, rode, rouge, rojo, roja, reddish, brick red, mahogany, brick',
  buff: 'buff, buffs, buf, fauve, gelb, gelbe, gelber, gelben, geel, gele, leonado, leonada, ocre',
  gold: 'gold, golden, goldens, golds, gld, dore, doree, goud, dorado',
  silver: 'silver, sliver, silvers, slvr, silber, zilver, argente, argentee, plata',
  laced: 'laced, lace, lacing, laces, lased, layced, gesaeumt, gesaumt, gezoomd, maille',
  pencilled: 'pencilled, penciled, pencil, penciling, pencilling, multiple laced',
  spangled: 'spangled, spangle, spangles',
  barred:
    'barred, barreds, bared, bard, barrd, bar, bars, single barred, double barred, striped, stripey, stripy, stripe, stripes, zebra, gestreift, gestreept, gestreepte, carijo, carijos, barre, barree, barrada, barrado, gesperbert, barred up',
  cuckoo:
    'cuckoo, cuckoos, cookoo, cukoo, cuckcoo, coucou, coocoo, coo coo, cookie coo, koekoek, sperber, gesperberte, cuco, kuckuck, coco',
  columbian:
    'weiss schwarzcolumbia, schwarzcolumbia, weiss schwarzcolumbian, columbian, columbians, columbia, colombian, colombia, columbien, columbine, col',
  partridge: 'partridge, partridges, patridge, partrige, perdrix, rebhuhn, rebhuhnfarbig, patrijs, perdiz',
  wheaten: 'wheaten, wheatens, wheatan, wheatin, weaten, weizen, weizenfarbig, tarwe, froment, trigueno',
  birchen: 'birchen, birchens, birchin, birken',
  copper: 'copper, coppers, cooper, cuivre, cuivree, kupfer, koper, cobre, cobrizo',
  crele: 'crele, creole',
  duckwing: 'duckwing, duck wing',
  mottled: 'mottled, mottle, mottles, cailloute',
  speckled: 'speckled, speckle, speckledy, speckles, spekled, speckeled, tricolour',
  light: 'light, clara, claras, claro, claros, hell, lite, lt, licht, lights, helle, herminee, hermine',
  dark: 'dark, drk, dk, darks, donker, dunkel',
  yellow: 'yellow, yellows, lemon, yellowish, blonde, blond, jaune, amarillo',
  pale: 'pale, paler, cremy, off white, straw, light coloured, light colored, creamy white',
  chipmunk: 'chipmunk, chipmunks, chipmunk stripes, chipmunky, striped chipmunk, wild type, wildtype',
  ginger: 'ginger, orange, rusty, rust, tan, fawn',
  salmon: 'salmon, lachs, saumon, zalm',
  cream: 'cream, creme, creamy, crema',
  brown: 'brown, browns, braun, bruin, brun, brune',
  grey: 'grey, gray, greys, grays, grau, gris, grise, grijs',
  exchequer: 'exchequer, exchecker, xchequer',
  isabel: 'isabel, isabella, isabelle',
  quail: 'quail',
  pyle: 'pyle, pile, red pyle',
  paint: 'paint, painted, paints',
  jubilee: 'jubilee',
  crested: 'crested, crest, huppe, huppee',
  bearded: 'bearded, beard',
  'mille fleur': 'mille fleur, millefleur, mille fleurs, millie fleur',
  porcelain: 'porcelain, porcelaine',
  frizzle:
    'frizzle, frizzles, frizzled, frizzly, frizz, frissle, frizle, curly, curly feathered, frise, frisee, lockig',
  smooth: 'smooth, smooths, smooth feathered, smoothe, normal feathered, flat feathered',
  auburn: 'auburn',
  coloured: 'coloured, colored, colourful, colorful',
  mixed:
    'mixed colour, mixed colours, mixed color, mixed colors, mixed coloured, multi coloured, multicoloured, multicolored',
  tufted: 'tufted, tufts, eared, ear tufts, ear tufted',
  'short legged':
    'short legged, short leg, shortleg, short legs, shorty, short legger, dwarf legged, creeper, creepers',
  'long legged': 'long legged, long leg, long legs, tall legged',
  rumpless:
    'rumpless, tailless, no tail, no tails, without tails, without a tail, without any tail, without any tails, lacking tails',
  tailed: 'tailed, long tailed, with tails, full tailed',
  'clean-faced':
    'clean faced, plain faced, plain face, cleanfaced, clean face, no tufts, not tufted, untufted, tuftless',
} as const
export type Colour = keyof typeof colourWords
