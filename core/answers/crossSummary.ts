// core/answers/crossSummary.ts: the verdict of one mating in a line of at most 160 characters.
import type { Case, Crossed, LookShare } from '../answer.ts'
import type { Aspect } from '../question.ts'
import { shareWords } from './fraction.ts'
import { asksOfHenOnly, henSummary, shellSummary } from './henSummary.ts'
import { fitting, longest } from './parts.ts'
import { shownSummary } from './shownSummary.ts'
import type { ShownId } from '../looks/shown.ts'

const verdictWord = { yes: 'Yes', partly: 'Partly', no: 'No' } as const

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** Shares by a reading of the look, commonest first. */
function sharesBy(
  kinds: readonly LookShare[],
  read: (kind: LookShare) => string,
): readonly (readonly [string, number])[] {
  const shares = new Map<string, number>()
  for (const kind of kinds) shares.set(read(kind), (shares.get(read(kind)) ?? 0) + kind.share)
  return [...shares].toSorted((a, b) => b[1] - a[1])
}

const listed = (shares: readonly (readonly [string, number])[]): string =>
  shares.map(([words, share]) => `${shareWords(share)} ${words}`).join(', ')

const legWords = { normal: 'normal', short: 'short-legged', dwarf: 'dwarf' } as const

/** The colour alone, as a keeper names it: 'blue', 'splash', without what differs between cock and hen. */
const mainly = ({ adult }: LookShare): string => adult.split(/,| \(/)[0] ?? adult

/** Special forms first, since where they segregate they are what is asked. */
function mixOf({ cockerels, pullets }: Case, most = 3): string | undefined {
  const all = [...cockerels, ...pullets].map((kind) => ({ ...kind, share: kind.share / 2 }))
  const form = sharesBy(all, ({ look }) =>
    look.form.feather === 'normal'
      ? look.form.neck === 'feathered'
        ? legWords[look.form.legs]
        : `${look.form.neck} neck`
      : look.form.feather,
  )
  if (form.length > 1 && form.length <= 3)
    return listed(form.map(([words, share]) => [words === 'normal' ? 'plain' : words, share]))
  const [m, f] = [sharesBy(cockerels, mainly), sharesBy(pullets, mainly)]
  const same =
    m.length === f.length &&
    m.length > 1 &&
    m.length <= most &&
    m.every(([words, share]) => f.some(([w, s]) => w === words && Math.abs(s - share) < 1e-6))
  return same && listed(m).length < 20 * most ? listed(m) : undefined
}

/** Of all chicks: features of form that some have and some lack, then what becomes of the black parts. */
function parting({ cockerels, pullets }: Case): readonly string[] {
  const all = [...cockerels, ...pullets].map((kind) => ({ ...kind, share: kind.share / 2 }))
  const some = (share: number): boolean => share > 0.01 && share < 0.99
  const features = new Set(all.flatMap(({ form }) => form))
  const forms = [...features]
    .map((word): readonly [string, number] => [
      word,
      all.filter(({ form }) => form.includes(word)).reduce((sum, { share }) => sum + share, 0),
    ])
    .filter(([, share]) => some(share))
  const combs = sharesBy(all, ({ comb }) => `${comb} comb`).filter(([, share]) => some(share))
  const tints = sharesBy(all, ({ look }) => look.plumage.black).filter(([tint]) => tint !== 'none')
  const wings = sharesBy(all, ({ feathering }) => feathering).filter(([speed]) => speed !== 'unknown')
  const reds = sharesBy(all, ({ look }) => look.plumage.red).filter(([tint]) => tint !== 'none')
  return [
    ...(forms.length > 0 && forms.length <= 3 ? [listed(forms)] : []),
    ...(combs.length > 1 && combs.length <= 3 ? [listed(combs)] : []),
    ...(tints.length > 1 && tints.length <= 3 ? [`${listed(tints)} where black would be`] : []),
    ...(wings.length > 1 ? [`${listed(wings)} feathering`] : []),
    ...(reds.length > 1 && reds.length <= 4 ? [`${listed(reds)} where gold would be`] : []),
  ]
}

/** As many whites in nearly every case, whatever is under them. */
function whitesLine(cases: readonly Case[]): string | undefined {
  const whites = ({ cockerels, pullets }: Case): number =>
    [...cockerels, ...pullets].reduce((sum, { look, share }) => sum + (look.plumage.white ? share / 2 : 0), 0)
  const first = cases[0] ? whites(cases[0]) : 0
  const alike = cases.filter((one) => Math.abs(whites(one) - first) < 0.01)
  const weight = alike.reduce((sum, one) => sum + one.weight, 0)
  if (first < 0.01 || first > 0.99 || weight < 0.75) return undefined
  return `${capital(shareWords(first))} white, ${shareWords(1 - first)} coloured; what is under the white decides the rest.`
}

/** Combs or legs were asked: of all chicks, or by sex where the sexes differ. */
function partsLine([one, ...others]: readonly Case[], aspects: readonly Aspect[]): string | undefined {
  const read = aspects.includes('comb')
    ? ({ comb }: LookShare): string => `${comb} comb`
    : aspects.includes('legs')
      ? ({ shank }: LookShare): string => `${shank} shanks`
      : undefined
  const first = aspects.find((aspect) => ['comb', 'legs', 'sexing', 'shell'].includes(aspect))
  if (!one || !read || first === 'sexing' || first === 'shell') return undefined
  const words = ({ cockerels, pullets }: Case): string => {
    const [m, f] = [listed(sharesBy(cockerels, read)), listed(sharesBy(pullets, read))]
    return m === f ? `${capital(m)}.` : `Cockerels: ${m}; pullets: ${f}.`
  }
  const line = words(one)
  return others.every((other) => words(other) === line) && line.length <= longest ? line : undefined
}

/** Shares of each sex, where the sexes differ. */
function bySexLine({ cockerels, pullets, sexing }: Case): string | undefined {
  const [m, f] = [sharesBy(cockerels, mainly), sharesBy(pullets, mainly)]
  if (m.length + f.length < 3 || m.length > 3 || f.length > 3) return undefined
  const line = `Cockerels: ${listed(m)}; pullets: ${listed(f)}. Sexable at hatch by ${sexing.signs[0]?.sign}.`
  return line.length <= longest ? line : undefined
}

/** Shares were asked, and no one colour answers. */
function sharesLine(cases: readonly Case[], aspects: readonly Aspect[]): string | undefined {
  const [one, ...others] = cases
  if (!one || !aspects.includes('shares') || aspects.includes('sexing')) return undefined
  if (others.length > 0) return whitesLine(cases)
  if (one.sexing.verdict !== 'no') return bySexLine(one)
  const mix = mixOf(one, 5)
  const told = mix === undefined ? parting(one) : [mix]
  if (told.length === 0) return undefined
  return fitting(`${capital(told.join('; '))}; not sexable at hatch.`, `${capital(told[0]!)}; not sexable at hatch.`)
}

/** "feather sexing": whether the wing tells, before any other sign. */
function wingLine(cases: readonly Case[], aspects: readonly Aspect[]): string | undefined {
  const [one] = cases
  if (!one || !aspects.includes('wings')) return undefined
  const all = (kinds: readonly LookShare[], speed: string): boolean =>
    kinds.every(({ feathering }) => feathering === speed)
  if (cases.every(({ cockerels, pullets }) => all(cockerels, 'slow') && all(pullets, 'fast')))
    return 'Yes, by the wing: slow cockerels, fast pullets; look within a day or two of hatch.'
  const [sign] = one.sexing.signs
  const other = sign && sign.sign !== 'wing feathers' && one.sexing.verdict !== 'no' ? ` Here ${sign.sign} tells.` : ''
  return `By the wing only if the cock is pure fast-feathering and the hens slow, in your own strains.${other}`
}

/** Asked by the way they look, or not asked by any: what they grow into stands before whether they can be sexed. */
function looksLine(cases: readonly Case[], aspects: readonly Aspect[]): string | undefined {
  const [one, ...others] = cases
  if (!one || aspects.includes('sexing') || one.colourKnown === false) return undefined
  const asked = aspects.includes('adults') || aspects.includes('chicks') || aspects.includes('shares')
  const all = oneLook(cases)
  const plain = all?.replace(/ all over$/u, '')
  if (all !== undefined && others.length === 0 && one.sexing.verdict === 'no')
    return fitting(
      `All grow up ${plain}; not sexable at hatch: ${one.sexing.why}.`,
      `All grow up ${plain}; not sexable at hatch.`,
    )
  const [cocks, hens] = [one.cockerels, one.pullets].map((kinds) => sharesBy(kinds, mainly))
  if (others.length > 0 || cocks!.length > 1 || hens!.length > 1) return undefined
  const [cock, hen] = [cocks![0]![0], hens![0]![0]].map((look) => look.split(',')[0]!)
  if (!asked && one.sexing.verdict === 'no' && cock === hen)
    return fitting(
      `All grow up ${cock}; not sexable at hatch: ${one.sexing.why}.`,
      `All grow up ${cock}; not sexable at hatch.`,
    )
  if (!asked) return undefined
  const sexed =
    one.sexing.verdict === 'no' ? 'not sexable at hatch' : `sexable at hatch by ${one.sexing.signs[0]?.sign}`
  const line = `Cockerels grow up ${cocks![0]![0]}, pullets ${hens![0]![0]}; ${sexed}.`
  return line.length <= longest ? line : undefined
}

/** @param doubtful the reason holds in the likeliest case, and another in others */
function verdictLine(one: Case, mix = mixOf(one), doubtful = false): string {
  const { verdict, why, signs } = one.sexing
  const [sign] = signs
  if (one.colourKnown === false && verdict === 'no')
    return `${mix ? `${capital(mix)}; sexing` : 'Sexing'} at hatch hangs on the parents’ colours, which are not told.`
  if (verdict === 'no' || !sign) {
    const plain = `${mix ? `${capital(mix)}; not` : 'Not'} sexable at hatch${doubtful ? ', most likely because' : ':'} ${why}.`
    return fitting(plain, mix ? `${capital(mix)}; not sexable at hatch.` : plain)
  }
  const word = verdictWord[verdict]
  return fitting(
    `${word}, at hatch by ${sign.sign}: cockerels ${sign.cockerel}; pullets ${sign.pullet}.`,
    `${word}, sexable at hatch by ${sign.sign}.`,
  )
}

const below = ' under the white'
/** 'silver and not black under the white' -> each of them under the white. */
const parted = (fact: string): readonly string[] =>
  fact.endsWith(below)
    ? fact
        .slice(0, -below.length)
        .split(' and ')
        .map((one) => one + below)
    : fact.split(' and ')
/** The other way round. */
function rejoined(all: readonly string[]): string {
  const [hidden, seen] = [all.filter((fact) => fact.endsWith(below)), all.filter((fact) => !fact.endsWith(below))]
  const under = hidden.map((fact) => fact.slice(0, -below.length)).join(' and ')
  return [...seen, ...(under === '' ? [] : [under + below])].join(' and ')
}

/** What a hen lays has no part in how her chicks are sexed. */
const ofSexing = (fact: string): boolean => !fact.includes('blue egg')

/** 'the cock is black, naked-necked, and the hens are slow' -> each thing with its subject. */
const facts = (given: string): readonly (readonly [string, string])[] =>
  given.split(', and ').flatMap((clause) => {
    const [, subject = '', rest = ''] = /^(the .*? (?:is|are) )(.*)$/.exec(clause) ?? ['', '', clause]
    return rest
      .split(', ')
      .flatMap(parted)
      .filter(ofSexing)
      .map((fact): readonly [string, string] => [subject, fact])
  })

type Apart = { readonly given: string; readonly onlyWay: boolean }

const states = ({ given }: Case, [subject, fact]: readonly [string, string]): boolean =>
  facts(given).some(([s, f]) => s === subject && f === fact)

/** Of what is given in a case, that which holds in every case of its verdict and in none of another; all of it, as one way among others, where nothing does. */
function setsApart({ given, sexing }: Case, cases: readonly Case[]): Apart {
  const alike = cases.filter((other) => other.sexing.verdict === sexing.verdict)
  const common = facts(given).filter((fact) => alike.every((other) => states(other, fact)))
  const apart = common.filter((fact) => !cases.every((other) => states(other, fact)))
  const shared = cases.some((other) => !alike.includes(other) && apart.every((fact) => states(other, fact)))
  return apart.length === 0 || shared
    ? { given: clauses(facts(given)) || given, onlyWay: alike.length === 1 }
    : { given: clauses(apart), onlyWay: true }
}

/** Facts put together again, each subject once. */
const clauses = (all: readonly (readonly [string, string])[]): string =>
  [...Map.groupBy(all, ([subject]) => subject)]
    .map(([subject, own]) => subject + rejoined(own.map(([, fact]) => fact)))
    .join(', and ')

const sexable = { yes: 'sexable', partly: 'partly sexable', no: 'not sexable' } as const

/** What every chick grows into, where that is one look in both sexes and in every case. */
function oneLook(cases: readonly Case[]): string | undefined {
  const looks = new Set(cases.flatMap(({ cockerels, pullets }) => [...cockerels, ...pullets].map(({ adult }) => adult)))
  const [only] = looks
  return looks.size === 1 ? only : undefined
}

/** Where colour never tells and only the speed of feathering may, that is said last. */
function wingsLine(cases: readonly Case[]): string | undefined {
  const told = cases.filter(({ sexing }) => sexing.verdict !== 'no')
  const byWings = told.every(({ sexing }) => sexing.signs[0]?.sign === 'wing feathers')
  if (told.length === 0 || told.length === cases.length || !byWings) return undefined
  const look = oneLook(cases)
  const wings = 'wing feathers tell only if the cock is fast-feathering and the hens slow'
  return fitting(
    `Not sexable by colour${look === undefined ? '' : `: all grow up ${look}`}; ${wings}.`,
    `Not sexable by colour; ${wings}.`,
  )
}

/** Several cases: what it hangs on. Of each verdict the likeliest case is told, the likeliest verdict first. */
function dependsLine(cases: readonly Case[]): string {
  const told = [...new Map(cases.toReversed().map((one) => [one.sexing.verdict, one])).values()].toReversed()
  const [likeliest, ...others] = told.toSorted((a, b) => b.weight - a.weight)
  if (others.length === 0)
    return verdictLine(
      likeliest!,
      cases.every((one) => mixOf(one) === mixOf(likeliest!)) ? undefined : '',
      cases.some(({ sexing }) => sexing.why !== likeliest!.sexing.why),
    )
  const clause = (one: Case): string => {
    const { given } = setsApart(one, cases)
    return given === 'otherwise'
      ? `otherwise ${sexable[one.sexing.verdict]}`
      : `${sexable[one.sexing.verdict]} if ${given}`
  }
  const inOrder = [likeliest!, ...others].toSorted(
    (a, b) => Number(a.given === 'otherwise') - Number(b.given === 'otherwise'),
  )
  return fitting(
    `It depends: ${inOrder.map(clause).join('; ')}.`,
    `It depends: ${clause(inOrder[0]!)}; else ${setsApart(inOrder[0]!, cases).onlyWay ? '' : 'mostly '}${sexable[inOrder[1]!.sexing.verdict]}.`,
    `It depends on the parents: likeliest ${sexable[likeliest!.sexing.verdict]} at hatch.`,
  )
}

/** @param asked what of the chicks is counted first, whatever else is asked */
export function summaryOf(
  crossed: Crossed,
  aspects: readonly Aspect[],
  asked: readonly ShownId[] = [],
  outOf?: number,
): string {
  const told = asked.length > 0 ? shownSummary(crossed, asked, outOf) : undefined
  if (told === undefined) return unaskedSummary(crossed, aspects)
  return aspects.includes('sexing') ? fitting(`${told} ${verdictLine(crossed.cases[0]!, undefined)}`, told) : told
}

function unaskedSummary({ cases }: Crossed, aspects: readonly Aspect[]): string {
  const [first] = cases
  if (first?.hen && asksOfHenOnly(aspects)) return shellSummary(cases, aspects) ?? henSummary(first.hen, aspects)
  const looks =
    wingLine(cases, aspects) ?? partsLine(cases, aspects) ?? sharesLine(cases, aspects) ?? looksLine(cases, aspects)
  if (looks !== undefined) return looks
  return cases.length > 1 ? (wingsLine(cases) ?? dependsLine(cases)) : verdictLine(first!)
}
