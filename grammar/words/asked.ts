// grammar/words/asked.ts: what of a cross a keeper asks for, and the goals of a choice. Phrases parted by commas.
import type { Aspect, Goal } from '../../core/question.ts'

export const aspectWords: Readonly<Record<Aspect, string>> = {
  sexing:
    'sexable, sexible, sexables, sexeable, sex able, sexing, sex, sexed, sex em, sex them, sex linked, sexlinked, autosex, auto sex, tell apart, tell them apart, tell em apart, tell the chicks apart, tell boys from girls, boys from girls, girls from boys, boys from the girls, girls from the boys, the boys from the girls, apart at hatch, pick out, pick the girls, pick out the girls, pick girls, pick out the boys, pick the boys, pick em out, sort, sortable, sort em, sort them, distinguish, distinguishable, tell who is who, tell whos who, know the sex, gender, genders, dot, dots, head dot, head spot, head spots, headspot, headspots, white dot, white spot, spotted, at hatch, at birth, at hatching, day old, dayold, day olds, day 1, day one, first day, newborn, from day one, which are boys, which are girls, which ones are boys, which ones are girls, know the boys, know the girls, spot the boys, spot the girls, males from females, females from males, male from female, female from male, hens from roosters, hens from roos, pullets from cockerels, cockerels from pullets, roos from hens, roos from pullets, pullets from roos, cocks from hens, boy or girl, girl or boy, boys or girls, male or female, males or females, pullet or cockerel, cockerel or pullet, roo or hen, hen or roo, hen or rooster, girls show, wing sex, feather sex, feather sexing, wing sexing, vent, vent sex, tell at hatch, tell right away, visually, the sexes, sexes, sex chicks, sex by color, sex by colour, color sex, colour sex, color sexed, sexables at hatch, which is which, whats what, tell which, tell sex',
  chicks:
    'look like, looks like, chick color, chick colour, chick colors, chick colours, what color, what colour, what colors, what colours, wat color, which colour, which color, color of the babies, colour of the babies, colour of chicks, color of chicks, come out, comes out, turn out, colors, colours, color, colour, down color, down colour, fluff',
  adults:
    'grown, grown up, full grown, fully grown, as adults, adult, adults, when grown, older, feather out, feathered out, adult plumage, plumage, mature look, grow up, grow into, grow out, later on',
  eggs: 'eggs, egg count, lay, lays, laying, laid, good layers, egg laying, eggs a year, eggs per year, eggs a week, eggs per week, how many eggs, egg number, egg numbers, egg production, layer, layability, egg, ova',
  shell:
    'egg color, egg colour, egg colors, egg colours, eggs color, eggs colour, color eggs, colour eggs, color egg, colour egg, coloured eggs, colored eggs, shell, shell color, shell colour, shells, egg shell, eggshell, color of eggs, colour of eggs, color of the eggs, colour of the eggs, what color eggs, what colour eggs',
  size: 'size, sizes, big, bigger, how big, weight, weights, weigh, heavy, body size, how large, size of, weighs, grösse, grosse, taille, gewicht, poids, tamano',
  temper:
    'temper, temperament, temperment, temperaments, calm, calmer, flighty, friendly, friendlier, docile, nice, aggressive, agressive, loud, noisy, quiet, kids, kid friendly, tame, gentle, personality, personalities, skittish, lap chicken, sweet, nasty, attitude, spicy, behaviour, behavior, good with kids, for kids, with kids, children, human aggressive, wild',
  broody:
    'broody, broodies, broodiness, go broody, goes broody, broodies a lot, setty, sit on eggs, brood, going broody, raise chicks, good mothers, good mamas, glucke, brüten, gluckt',
  hardiness:
    'cold hardy, cold hardiness, hardy, hardiness, hardier, winter, winter layers, winters, heat, hot, climate, cold, frostbite, frost, heat tolerant, heat hardy, snow, humid, winterhart, robust',
  feed: 'feed, eat, eats, feed bill, feed conversion, feed efficiency, how much feed, feed cost, eat less',
  shares:
    'percent, percents, percentage, percentages, pct, odds, ratio, ratios, chance, chances, probability, fraction, what split, proportion, proportions, how many of each, what are the odds, prozent, procent, pourcentage, how likely',
  why: 'why, how come, explain, reason, whys, y tho',
  more: 'more detail, more details, tell me more, more info, more please, go on',
  symbols:
    'genotype, genotypes, genetically, alleles, genes, gene symbols, punnett, punnett square, symbols, in symbols, genetics, notation',
  reverse:
    'other way, other way round, other way around, the other way, reverse, reversed, in reverse, flip, flipped, flip it, flip them, switch, switch it, switched, swap them, swapped, both directions, both ways, each way, vice versa, opposite, opposite way, reciprocal, either way, other way about, wrong way round, wrong way, backwards, which way round, which way, way round, way around, switch them, turn it around, reverse it, reverse cross, roles reversed',
  welfare:
    'dead, die, dies, died, dying, dead in shell, safe, lethal, lethals, harm, harmful, dangerous, deformed, deformity, deformities, cruel, unethical, ethical, inbred, inbreeding, problems, unhealthy, lethal gene, survive, survivors, suffer',
  comb: 'comb, combs, what comb, comb type, comb types, kamm, crete',
  maturity:
    'point of lay, pol, start laying, start to lay, begin laying, first egg, first eggs, age at first egg, when do they lay, when will they lay, lay age, maturity, age of lay, come into lay, coming into lay, begin to lay, when they lay, laying age, when do they start',
}

export const goalWords: Readonly<Record<Goal, string>> = {
  sexable:
    'sex link, sex links, sexlink, sexlinks, sexlynk, sexlynks, sexlinc, sex sinks, sex sink, sex lynx, sex linx, sexlinx, six links, sex lings, sex linking, sexlinking, sex linkable, sex link chicks, autosexing, auto sexing, autosexing chicks',
  eggs: 'most eggs, more eggs, lots of eggs, best layers, good layers, great layers, heavy layers, egg machines, maximum eggs, max eggs, egg output, best laying, better layers, lay well, lay more, lays well, high egg, egg production, prolific',
  'blue-eggs':
    'blue eggs, blue egg, bluest, blue shell, blue shells, lay blue, lays blue, laying blue, sky blue, true blue',
  'green-eggs':
    'green eggs, green egg, darkest green, greenest, lay green, lays green, mint, minty, mint green, moss green, teal, sage green',
  'olive-eggs':
    'olive, olives, olive eggs, olive egg, darkest olive, dark olive, speckled olive, moss, olive green, olive egger pullets, lay olive, lays olive, oliver',
  'brown-eggs': 'brown eggs, brown egg, lay brown, brown shell',
  'dark-eggs':
    'dark eggs, dark egg, dark brown eggs, darkest eggs, darkest brown, chocolate eggs, chocolate egg, darkest egg, terracotta, mahogany eggs, dark brown egg, darker eggs, speckled eggs, dark brown',
  'white-eggs': 'white eggs, white egg, lay white',
  size: 'bigger, biggest, larger, heavier, giant size, big birds, large birds',
  meat: 'meat, meaty, table, table birds, table bird, meat and eggs, dual purpose, dual, dp, carcass, carcase, roast, roasting, fryers, eating, freezer, freezer camp, butcher, butchering, broiler type, for eating, for the table, for the pot',
  calm: 'calm, docile, friendly, gentle, tame, sweet, quiet, nice temperament, good temperament',
  barred:
    'barred chicks, barred daughters, barred pullets, barred babies, barred offspring, barred hens out',
  laced: 'laced chicks, laced daughters, laced pullets, laced babies, laced offspring',
  show: 'for show, for showing, for the show, for exhibition, win, champion',
  cold: 'cold hardy, winter layers, winter laying, cold climate, cold winters, for winter, cold weather, hardy, winter hardy',
  heat: 'heat tolerant, heat hardy, hot climate, hot summers, hot weather',
  broody: 'broody hens, go broody, good broodies, broodies',
  family: 'kids, children, family, family friendly, kid friendly, pets, good with kids, grandkids, beginner, beginners',
}
