// grammar/words/places.ts: names of places that a keeper may write from: never respelt as birds, and which breeds bear one.

/** Places whose names lie near the name of a bird, a colour or a sex. */
export const places: readonly string[] =
  `arkansas colorado indiana maine maryland montana carolina scotia montreal wales ireland dorset wiltshire gwent leeds
  manchester exeter stafford carlisle france germany spain belgium sweden norway greece romania iceland berlin paris milan
  brussels perth darwin canberra africa ghana japan korea thailand manila malaysia brazil argentina chile canada asia austin
  dallas denver miami tampa columbus boise salem tyler billings fargo toledo akron rochester hartford waco`
    .split(/\s+/u)
    .filter(Boolean)

/** Breeds that are called as the place is. */
export const placeNames: ReadonlySet<string> = new Set([
  'delaware',
  'rhode island',
  'new hampshire',
  'sussex',
  'jersey',
  'holland',
  'hamburg',
  'plymouth',
  'orpington',
  'dorking',
  'java',
  'sumatra',
  'ancona',
])
