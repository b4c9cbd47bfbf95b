// grammar/words/small.ts: the small words that give a sentence its shape. Parted by commas.

export const smallWords = {
  is: 'is, are, r, was, were, being, be, would be, will be, should be, equals, means, called, is called, named, is named, was called, happens to be, must be, might be, could be, is a, are the, turns out to be, is the, are my',
  not: 'not, isnt, arent, aint, wasnt, werent, no, nope, non, without, w o, w out, wo, doesnt, dont, didnt, never, none, neither, nor, nicht, kein, keine, niet, geen, pas',
  of: 'of, outta, out of the, de, du',
  forWhom:
    'for, fr, to go w, to put w, to breed w, to pair w, to cross w, to mate w, to run w, to make, to produce, to go with, to put with, to put over, to put on, to put under, to go over, to go under, to cover, to breed with, to breed to, to cross with, to pair with, to mate with, to run with, that go with, that goes with, to use on, to use over, to go in with, to match, to suit, suitable for, to add to, good for, best for, to cross to, to cross over, to cross on, to breed over',
  which:
    'which, what, any good, any ideas on, any suggestions for, any, who should i, who should be, who would be, who would make, who makes, who will be, who could i, who do i, who can i, who would, who to, wat, wot, what sort, which sort,  whch, wich, whats, whatre, what kind of, what kind, what sort of, what type of, which kind of, what breed, what breeds, which breed, which breeds, what breed of, which breed of, what breeds of, best, ideal, recommended, is there any, are there any, is there a, suggest, suggestions for, recommend, recommendations for, advise, ideas for, nicest, suggestion for',
  want: 'want, wants, wanting, wanted, need, needs, needing, get, getting, buy, buying, looking for, lookin for, look for, after, find, source, choose, pick, add, adding, seeking, shopping for, which should i, should i get, should i use, should i buy, should i keep, should i pick, in need of, hunting for, on the lookout for, searching for, interested in, deciding on, decide on, trying to find, match for, matches for, good match for, best match for, perfect match for, partner for, partners for, mate for, mates for, match up for, husband for, wife for, wives for, girlfriend for, girlfriends for, boyfriend for, companions for, pair up with, hook up with',
  my: 'my, our, i have, ive got, i got, we have, weve got, mine, me, got, have, ive, has, own, i own, having',
  his: 'his, his own, hes, own',
  her: 'her, her own, hers, shes',
  their: 'their, theyre, them, em, they, these, those, it, he, she, him, its',
  carries:
    'split to, split for, splits for, split, splits, carrying, carries, carry, carrier of, carrier for, carrier, carriers, het for, het, hets, heterozygous, heterozygous for, heterozygote, carries one copy of, one copy of, single copy of, has one copy of, hidden, hiding, hides, recessive for, spalterbig, spalterbig in, split voor, porteur de, porteur, portador de, carried',
  pure: 'pure for, homozygous, homozygous for, homo for, double dose, double dose of, two doses of, two copies of, double copy of, two copies, breeds true for, pure bred for, double factor, 2 copies of, 2 doses of, reinerbig, hom for, homozygote for, both copies, fixed for, db factor',
  single:
    'single dose, single dose of, one dose of, single factor, one dose, single copy, only one copy of, only one dose of, 1 copy of, 1 dose of',
  swap: 'swap, swap out, change, replace, switch out, trade, substitute, make, swapped, exchange, put in, use',
  same: 'same as, the same as, same but, same thing but, same with, same thing with, same cross but, as before but, the same but, same again but, same one but, same question but, same for, ditto but, do the same with, same, samesies but, the same with, the same for, same deal but, same again with, same as before but, dito but',
  about:
    'what about, how about, and what about, and if, what if, what abt, how abt, wat about, whatabout, hows about, ok what about, okay what about, now what about, try, lets try, lets say, wie ist es mit, en wat als, et si, y si',
  instead: 'instead, insted, rather, statt, in plaats van, au lieu de, en vez de',
  together:
    'crossed to each other, bred to each other, mated to each other, put to each other, crossed with each other, bred with each other, crossed together, bred together, mated together, crossed among themselves, bred among themselves, each other, together, to each other, with each other, to one another, among themselves, amongst themselves, to themselves, to their own, inter se',
} as const

/** Words that may stand anywhere and say nothing here. */
export const fillers =
  'on earth, in the world, the heck, the hell, people, ppl, folk, most people, red mite, red mites, what happens, what happen, what happens when, what happen when, wat happens, what will happen, what would happen, what happened, what would i get, what will i get, what do you get, what would you get, what am i getting, what can i expect, what will the, what would the, what do the, what will their, what would their, what do their, what will those, what would those, what do those, what will these, what would these, what do these, a, an, the, some, few, several, couple, couple of, pair of, trio of, bunch of, lots of, lot of, really, very, just, pls, plz, please, thanks, thx, ty, cheers, hi, hello, hey, morning, evening, all, guys, folks, everyone, everybody, anyone, anybody, im, i, am, me, you, u, we, us, so, well, ok, okay, umm, um, uh, er, like, kinda, sorta, lol, haha, also, too, then, now, here, there, this, that, thats, beautiful, lovely, gorgeous, nice looking, big old, old, young, little, new, other, another, ones, own, nice, great, bird, birds, chicken, chickens, fowl, poultry, breed of, kind of, sort of, type, actually, basically, probably, maybe, think, thinking, thought, going, gonna, wanna, do, does, did, done, can, could, would, will, should, shall, may, might, if, when, how, who, where, mature, adult, proven, purebred, pure bred, pure, straight, regular, plain, normal, ordinary, standard, typical, average, lone, only, year old, yr old, month old, week old, proper, real, true, true bred, supposed, allegedly, tbh, imo, btw, guess, say, said, says, pretty sure, definitely, actual, resident, free, handsome, favourite, favorite, current, main, head, aged, ol, damn, bloody, frigging, poor, lil, wee, mixed flock of, mixed flock, flock of, flock, pen of, pen, group of, harem of, yard of, bunch, line, lines, strain, stock, strains, quality, tiny, huge, massive, same pen'

/** Numbers in words. */
export const numberWords: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  dozen: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  eighteen: 18,
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  hundred: 100,
  eins: 1,
  zwei: 2,
  drei: 3,
  vier: 4,
  sechs: 6,
  acht: 8,
  zehn: 10,
  zwoelf: 12,
  deux: 2,
  trois: 3,
  quatre: 4,
  cinq: 5,
  dix: 10,
  douze: 12,
  dos: 2,
  tres: 3,
  cuatro: 4,
  cinco: 5,
  diez: 10,
  doce: 12,
  twee: 2,
  drie: 3,
  tien: 10,
  twaalf: 12,
}
