// grammar/aspects.ts: what is asked of birds or chicks, and what is wished for, by the words of a message.
import type { Aspect, Goal } from '../core/question.ts'
import type { Token } from './token.ts'

const ofColour = /(?:colou?r|shade|couleur|farbe|kleur|color)/u

const ofLaying = /^(?:eggs?|egs?|egss|eggz|lay|lays|laying)/u

/** "and their eggs, what colour", "what colour will the daughters lay", "how brown are the eggs": of the shell, not of the chicks. */
function isOfShell(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at]!
  if (token.type !== 'aspect') return false
  const asksColour = token.aspect === 'chicks' && ofColour.test(token.word)
  if (asksColour && /\bshades?$/u.test(token.word) && asksShade(tokens)) return true
  const rest = tokens.slice(at + 1, at + 18)
  const end = rest.findIndex(({ type }) => type === 'stop')
  const after = end < 0 ? rest : rest.slice(0, end)
  const laid = after.find((next) => next.type === 'aspect' && next.aspect === 'eggs')
  const before = tokens
    .slice(Math.max(0, at - 3), at)
    .findLast(({ type }) => type !== 'filler' && type !== 'comma' && type !== 'and' && type !== 'is')
  const between = laid ? after.slice(0, after.indexOf(laid)) : after
  return (
    asksColour &&
    ((laid !== undefined && !between.some(({ type }) => type === 'comma' || type === 'and' || type === 'chick')) ||
      (before?.type === 'aspect' && before.aspect === 'eggs' && ofLaying.test(before.word)))
  )
}

/** "I don't care about sexing", "never mind the eggs". */
const isUnwanted = (tokens: readonly Token[], at: number): boolean =>
  /\b(?:(?:dont|not|doesnt|no) (?:\w+ )?(?:care|bothered|fussed|mind|matter|need|worried)|never mind|regardless of)\b/u.test(
    tokens
      .slice(Math.max(0, at - 5), at)
      .map(({ word }) => word)
      .join(' '),
  )

/** "best layers, no broody", "that dont go broody": what is not to be. */
const isUnwished = (tokens: readonly Token[], at: number): boolean =>
  /^(?:broody|broodies|broodiness|go broody|goes broody|going broody|broody hens)$/u.test(tokens[at]!.word) &&
  tokens
    .slice(Math.max(0, at - 3), at)
    .some(({ word }) => /^(?:no|not|dont|doesnt|wont|never|non|without|less|rarely|seldom|isnt|arent)$/u.test(word)) &&
  tokens.some(({ type }) => type === 'goal' || type === 'which' || type === 'want')

/** "safe to say he has two": nothing of harm. */
const isSafeToSay = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]!.word === 'safe' &&
  /^to (?:say|assume|bet|call)/u.test(
    tokens
      .slice(at + 1, at + 3)
      .map(({ word }) => word)
      .join(' '),
  )

/** "big crests": no weight is asked. */
const isOfPart = (tokens: readonly Token[], at: number): boolean =>
  /^(?:big|heavy|nice)$/u.test(tokens[at]!.word) &&
  (tokens[at + 1]?.type === 'trait' ||
    tokens[at + 1]?.type === 'line' ||
    /^(?:crests?|combs?|beards?|muffs?|feet|wattles|poms?|topknots?|hair)$/u.test(tokens[at + 1]?.word ?? ''))

/** "the red sort", "what sort for eggs". */
const isNoun = (tokens: readonly Token[], at: number): boolean =>
  ['close', 'stop', 'comma', 'forWhom', 'of'].includes(tokens[at + 1]?.type ?? 'stop') &&
  ['breed', 'family', 'colour', 'which', 'sexlink', 'their', 'filler'].includes(tokens[at - 1]?.type ?? '')

/** "1 in 4 die in shell": no colour of an egg. */
const isDeathInShell = (tokens: readonly Token[], at: number): boolean =>
  /^shells?$/u.test(tokens[at]!.word) &&
  tokens
    .slice(Math.max(0, at - 4), at)
    .some(({ word }) => /^(?:die|dies|died|dying|dead|death|deaths|quit|quits|stuck|pipped)$/u.test(word))

function spoken(tokens: readonly Token[]): readonly Aspect[] {
  const shades = tokens.some(
    (token, at) =>
      isOfShell(tokens, at) ||
      isHowBrown(token, tokens[at - 1], tokens) ||
      (token.type === 'aspect' && token.aspect === 'shell' && !/egg|shell/u.test(token.word)) || // "lay cream or tinted"
      (token.type === 'colour' &&
        tokens[at - 1]?.word === 'how' &&
        tokens.slice(at + 1, at + 5).some((next) => next.type === 'aspect' && next.aspect === 'eggs')),
  )
  const shells = tokens.some(
    (token, at) => (token.type === 'aspect' && token.aspect === 'shell') || isOfShell(tokens, at),
  )
  const first = asksFirstEgg(tokens)
  // "the weight of a grown pullet"
  const weighed = tokens.some((token) => token.type === 'aspect' && token.aspect === 'size')
  return unique(
    tokens.flatMap((token, at): readonly Aspect[] => {
      if (token.type !== 'aspect' || isSet(tokens, at)) return []
      if (isOfShell(tokens, at)) return ['shell']
      if (token.aspect === 'eggs' && first && /^(?:lay(?:s|ing)?|eggs)$/u.test(token.word)) return []
      if (
        (token.word === 'sort' && isNoun(tokens, at)) ||
        isUnwanted(tokens, at) ||
        isOfPart(tokens, at) ||
        (token.aspect === 'broody' && isUnwished(tokens, at)) ||
        isSafeToSay(tokens, at)
      )
        return []
      if (token.aspect === 'welfare' && isOldLoss(tokens, at)) return []
      if (token.aspect === 'welfare' && losesEggs(tokens, at)) return ['eggs']
      if (token.aspect === 'welfare' && isForTable(tokens, at)) return ['size']
      if (token.aspect === 'hardiness' && isPastSeason(tokens, at)) return []
      if (token.aspect === 'adults' && weighed) return []
      if (isDeathInShell(tokens, at)) return []
      if (shells && /^(?:come|comes|turn)s? out$/u.test(token.word)) return [] // what eggs come out
      if (areChicks(tokens, at)) return ['chicks']
      if (token.aspect === 'hardiness' && ofWinterLaying.test(token.word)) return ['hardiness', 'eggs']
      if (token.aspect === 'comb' && isFrosted(tokens, at)) return ['hardiness']
      if (token.word.startsWith('brood') && /^(?:went|gone|gotten)$/u.test(tokens[at - 1]?.word ?? '')) return [] // a hen that sits
      if (token.aspect === 'wings') return ['sexing', 'wings']
      return [
        shades && token.aspect === 'eggs' && !/number|many|year|count|week/u.test(token.word) ? 'shell' : token.aspect,
      ]
    }),
  )
}

/** "all white eggs, sick of it", "sick of brown eggs", "instead of white eggs": what is there, and not wished for. */
const isTiredOf = (tokens: readonly Token[], at: number): boolean => {
  const said = (from: number, to: number): string =>
    tokens
      .slice(Math.max(0, from), to)
      .map(({ word }) => word)
      .join(' ')
  return (
    /(?:sick|tired|bored|enough) of(?: (?:all|the|my|plain|boring))*$|(?:instead of|rather than|no more)(?: (?:the|my|plain))*$/u.test(
      said(at - 5, at),
    ) || /^(?:, )?(?:(?:and|im|i am|so) )*(?:sick|tired|bored) of (?:it|them|that)\b/u.test(said(at + 1, at + 9))
  )
}

/** "the kids want babies": they ask for it, and are no goal. */
const areAsking = (tokens: readonly Token[], at: number): boolean =>
  /^(?:kids|children|grandkids|family)$/u.test(tokens[at]!.word) &&
  /^(?:wants?|asks?|asked|begging|keep asking|would like|say|says|are asking)$/u.test(tokens[at + 1]?.word ?? '')

const ofWinterLaying = /^winter lay/u
/** "half my frostbite is combs": what the cold does to them. */
const isFrosted = (tokens: readonly Token[], at: number): boolean =>
  tokens
    .slice(Math.max(0, at - 5), at + 5)
    .some(({ word }) => /^(?:frostbite|frostbitten|frostnip|frozen|frosted)$/u.test(word))

/** "our old cock died in the spring": why there is another, and no loss among chicks. */
const isOldLoss = (tokens: readonly Token[], at: number): boolean =>
  /^(?:died|dead|killed)$/u.test(tokens[at]!.word) &&
  (tokens[at - 1]?.type === 'cock' || tokens[at - 1]?.type === 'hen') &&
  !tokens.some(({ word }) => /^(?:shell|embryos?|hatched|lethal)$/u.test(word))

/** "too small to eat", "too big for the table": what the birds weigh, and no hen is hurt. */
const isForTable = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]!.word.startsWith('too ') &&
  tokens.slice(at + 1, at + 6).some(({ word }) => /\b(?:eat|eating|table|meat|pot|oven|roast|freezer)$/u.test(word))

/** "running with him all winter", "bought last winter": when, and nothing of cold. */
const isPastSeason = (tokens: readonly Token[], at: number): boolean =>
  /^(?:winters?|summers?)$/u.test(tokens[at]!.word) &&
  /\b(?:all|last|this past|whole|over|since) (?:the )?$/u.test(
    tokens
      .slice(Math.max(0, at - 3), at)
      .map(({ word }) => `${word} `)
      .join(''),
  ) &&
  !tokens.some(({ word }) => /^(?:lay|lays|laying|hardy|cold|freez\w*|heated|survive)$/u.test(word))

/** "will I lose eggs": fewer laid, and no chick lost. */
const losesEggs = (tokens: readonly Token[], at: number): boolean =>
  /\b(?:lose|losing|loose|loosing)$/u.test(tokens[at]!.word) &&
  tokens.slice(at + 1, at + 5).some((next) => next.type === 'aspect' && next.aspect === 'eggs')

/** A hen that lays and fills a pot. */
const isDual = (word: string): boolean => /^(?:dual|dp|dual purpose|meat and eggs)$/u.test(word)

/** "which ones are the girls", "which of them r boys", "tell the boys early". */
const asksWhichSex = (tokens: readonly Token[]): boolean =>
  tokens.some(
    ({ type, word }, at) =>
      type === 'slash' &&
      word === '/' &&
      /^(?:boys?|males?|roos?|cockerels?)$/u.test(tokens[at - 1]?.word ?? '') &&
      /^(?:girls?|females?|hens?|pullets?)$/u.test(tokens[at + 1]?.word ?? ''),
  ) ||
  /\b(?:boys|cockerels|roos|males|girls|pullets|females)\b(?: \w+){0,2} (?:look|looks|be|are) (?:any )?different\b|\btell (?:the |which |my )?(?:boys|cockerels|roos|pullets|girls)(?: \w+)? (?:early|at|out|apart|when|on)\b|\b(?:which|wich|what|who)(?: (?:ones?|of (?:them|these|those)|chicks?))?s? (?:are|is|r|will be|would be)(?: the| all| my)? (?:girls|boys|hens|pullets|cockerels|roos|roosters|males|females|cocks|lads|ladies)\b/u.test(
    tokens
      .slice(0, 60)
      .map(({ word }) => word)
      .join(' '),
  )

const said = (tokens: readonly Token[]): string =>
  tokens
    .slice(0, 60)
    .map(({ word }) => word)
    .join(' ')

/** "when will the pullets start", "how long till they lay", "how long do Orpingtons take to lay": at what age. */
const asksFirstEgg = (tokens: readonly Token[]): boolean =>
  /\bwhen (?:do|does|will|would|should|shall|can|are|might|is)\b(?:[^.?!,]){0,60}? (?:start|begin|come into lay|in lay|lay)(?: (?:to lay|laying|up|producing|for me))?(?= [.?!,]|$)|\bwhen (?:do|will|would|should|can|might) (?:i|we|they|she|you) (?:get|have|see|expect) (?:(?:my|our|the|their|her|some|any) )?(?:first )?eggs\b|\bhow (?:long|old|soon)\b[^.?!]{0,60}? (?:til|till|until|before|to|they|when) (?:[^.?!]{0,40} )?(?:lay|start laying|start)(?= [.?!,]|$)/u.test(
    said(tokens),
  ) && !tokens.some(({ word }) => /^(?:again|set|hatch|incubat\w*|sexing|feather)$/u.test(word))

/** "the kids", "their children": the chicks, where no child is to keep them. */
const areChicks = (tokens: readonly Token[], at: number): boolean =>
  /^(?:kids|children)$/u.test(tokens[at]!.word) &&
  !tokens
    .slice(Math.max(0, at - 4), at)
    .some(({ word }) => /\b(?:for|with|around|near|about|my|have|nice|good|safe|friendly|grand|two|and)\b/u.test(word))

/** "8 eggs in the bator", "set a dozen eggs": eggs that are counted, and no question of laying. */
function isSet(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at]!
  if (token.type !== 'aspect' || token.aspect !== 'eggs' || !/^(?:eggs?)$/u.test(token.word)) return false
  const before = tokens.slice(Math.max(0, at - 3), at)
  const after = tokens.slice(at + 1, at + 6).map(({ word }) => word)
  const sat = before.some(({ word }) => /brood|^(?:sitting|sat)$/u.test(word)) && before.at(-1)?.word === 'on'
  const counted = before.some(
    ({ type, word }) => type === 'number' || type === 'which' || /^(?:some|few|dozen|which|whose)$/u.test(word),
  )
  return (
    sat ||
    (counted && tokens.slice(Math.max(0, at - 5), at).some(({ word }) => /^(?:hatched|sitting|sits)$/u.test(word))) ||
    (counted &&
      after.some((word) =>
        /^(?:bator|incubator|incubating|set|cooking|broody|brooding|hatching|brewing|going)$/u.test(word),
      ))
  )
}

const unique = <T>(list: readonly T[]): readonly T[] => [...new Set(list)]
/** "how dark", "how deep does the egg go": of the shell, where no chick is spoken of. */
const isHowBrown = ({ word }: Token, before: Token | undefined, tokens: readonly Token[]): boolean =>
  before?.word === 'how' &&
  (word === 'brown' ||
    (/^(?:dark|deep|olive|green)$/u.test(word) &&
      !tokens.some((token) => token.type === 'chick' || ofBody.test(token.word))))
const ofBody = /^(?:down|fluff|plumage|feathers?|adults?|grown|legs?|shanks?|skin|combs?|lacing|barring)$/u

/** "what shade do I get of Leghorn over Marans": shades are of eggs, unless the birds' own look is spoken of. */
const asksShade = (tokens: readonly Token[]): boolean =>
  tokens.some(({ type, word }) => type === 'aspect' && /\bshades?$/u.test(word)) &&
  tokens.some(({ type }) => type === 'breed' || type === 'family') &&
  !tokens.some((token) => token.type === 'chick' || ofBody.test(token.word))

/** Whether a cross-bred hen flies hangs on how lively and how heavy she is. */
const ofFlying = /^(?:fly|flies|flyers?|fliers?|flying)$/u

/** What is asked about. `laying`: layers were asked for; `mated`: birds are put together. */
export const aspectsOf = (
  tokens: readonly Token[],
  { laying, mated }: { readonly laying: boolean; readonly mated: boolean },
): readonly Aspect[] =>
  unique([
    ...spoken(tokens),
    ...(laying ? (['eggs'] as const) : []),
    ...(mated && tokens.some((token, at) => isHowBrown(token, tokens[at - 1], tokens)) ? (['shell'] as const) : []),
    ...(mated && tokens.some(({ word }) => ofFlying.test(word)) ? (['temper', 'size'] as const) : []),
    ...(asksFirstEgg(tokens) ? (['maturity'] as const) : []),
    ...(asksWhichSex(tokens) ? (['sexing'] as const) : []),
  ])

/** What is wished for: eggs, shell colours, sexable chicks. */
export const goalsOf = (tokens: readonly Token[]): readonly Goal[] =>
  unique(
    tokens.flatMap((token, at): readonly Goal[] => {
      if (areChicks(tokens, at) || isUnwished(tokens, at) || isTiredOf(tokens, at) || areAsking(tokens, at)) return []
      if (token.type === 'sexlink') return ['sexable']
      if (token.type !== 'goal') return []
      return isDual(token.word) || ofWinterLaying.test(token.word) ? ['eggs', token.goal] : [token.goal]
    }),
  )
