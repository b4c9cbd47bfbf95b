// grammar/words/sexes.ts: words for cock, hen and chick, and for kin. One phrase after another, parted by commas.

/** Words of one male. */
export const cock =
  'husband, hubby, boyfriend, roo, rooster, cock, cockerel, male, boy, boi, stag, stud, cockbird, cock bird, rooster bird, roosta, rooser, roster, cockrel, cockeral, cockrell, cocker, cuck, cok, fella, fellow, lad, bloke, rooter, man, he boy, m, tup, gentleman, cockrul, ruster, rooer, rue, rew, cock a roll, cock roll, cock rel'
/** Words of several males. */
export const cocks =
  'roos, roosters, cocks, cockerels, males, boys, bois, stags, cockbirds, cock birds, roostas, cockrels, cockerals, lads, fellas, blokes, gentlemen'
/** Words of one female. */
export const hen =
  'wife, girlfriend, hen, pullet, female, girl, gal, layer hen, hn, biddy, puller, pulet, pullit, pull it, f'
/** Words of several females. */
export const hens =
  'wives, girlfriends, hens, pullets, females, girls, gals, ladies, layer hens, laying hens, layers, lassies, hennies, hns, biddies, chooks, pulets, pullits'
/** A parent named by its part, which tells its sex as well as a sex word does. */
export const father = 'dad, father, daddy, papa, pop, sire, pa'
export const fathers = 'dads, fathers, sires, daddies, papas'
export const mothers = 'mums, moms, mothers, mamas, dams'
export const mother = 'mum, mom, mother, mama, momma, mommy, mummy, dam, ma'
export const daughter = 'daughter, daughters, dtr, dtrs'
export const son = 'son, sons'
export const sibling =
  'brother, brothers, sister, sisters, sibling, siblings, full sib, full sibs, sib, sibs, half brother, half sister'
export const grandchild =
  'granddaughter, granddaughters, grand daughter, grand daughters, grandson, grandsons, grandkids'
export const grandfather = 'grandsire, grandfather, granddad, grandad, grandpa, grand sire'
export const grandmother = 'granddam, grandmother, grandma, gran, nan, grand dam'
export const chick =
  'chick, chicks, chickie, chickies, baby, babies, peep, peeps, offspring, young ones, youngsters, progeny, chiks, chix, littles, little ones, hatchlings, bubs, chookies, biddys, their kids'
