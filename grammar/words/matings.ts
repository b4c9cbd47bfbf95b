// grammar/words/matings.ts: words that join two birds, by who comes first. Parted by commas.

/** The bird before it is the male. */
export const over =
  'x, and bred, and mated, and covered, and mounted, over, ovr, ova, ovver, on top of, over the top of, over top of, across, cross over, covering, covers, tread, treads, treading, topping, bred over, put over, used over, run over, ran over, set over, going over, go over, gone over, onto, on to, upon, serviced, services, servicing, served, mounting, mounts, mounted, jumping, jumped, bred onto, put onto'
/** As above, but a common word: it joins two birds only where they stand right beside it. */
export const overWeak =
  'go in with, goes in with, going in with, went in with, goes well with, go well with, pairs well with, works with, work well with, works well with, does well with, looks good with, on, to, with, w, wit, into, in with, alongside, crossed with, crossed to, crossed onto, crossed on, crossed over, crossed into, crossed by, cross with, cross to, crossing with, crossing to, bred to, bred with, bred on, breed to, breed with, breeding with, breeding to, mated to, mated with, mate with, mate to, mating with, put to, put on, put with, put in with, going on, going to, gets in with, jumped in with, goes on, goes to, goes with, going with, paired with, paired to, pair with, got to, got at, got with, gets to, got in with, in w, running with, run with, runs with, ran with, running w, running round with, run together with, housed with, living with, lives with, penned with, in a pen with, kept with, together with, mixed with, mixed to, hybridized with, back to, back on, back onto, back over, bred back to, bred back on, put back to, put back on, put back over, crossed back to, going back to, backcrossed to, back crossed to, back cross to, times'
/** The bird before it is the female. */
export const under =
  'under, underneath, beneath, covered by, bred by, mated by, serviced by, topped by, trodden by, treaded by, tread by, put under, run under, running under, set under, bred under, headed by, covered with, mounted by, jumped by'
/** Either may be the male. */
export const and = 'and, n, nd, as well as, along with'
export const or =
  'or, versus, vs, v, compared to, compared with, rather than, as opposed to, instead of, in place of, against'
/** Says that a mating is meant, before or after the birds. */
export const cross =
  'cross, crossing, crosses, crossed, crossbreed, crossbred, crossbreeds, cross breed, mix, mixes, mixed, mixing, hybrid, hybrids, breed, breeding, breeds, bred, mate, mating, mates, mated, pair, pairing, combo, combine, combining, combination, putting, put, matings, pairings, croos, croess, cros, crosss, krossing, kross'
/** "half Silkie half Cochin". */
export const half = 'half, part, 1 2'
export const between = 'between, of a, from a'
/** A chick or bird out of a hen by a cock. */
export const outOf =
  'out of, from, outta, off of, off, hatched from, hatched out of, came from, came out of, comes from, thrown by, daughter of, son of, offspring of, made from, made of, made by, made with'
export const by = 'by, sired by, fathered by'
export const generation = 'f1, f1s, first cross, first generation, first gen'
export const generation2 = 'f2, f2s, f3, f3s, f4, second generation, second gen, third generation'
