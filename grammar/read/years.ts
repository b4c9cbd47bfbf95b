// grammar/read/years.ts: the laying year that a keeper asks about: "in year 3", "after two years", "my 3 yr old hens".

const counts: Readonly<Record<string, number>> = { one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7 }
const ranks: Readonly<Record<string, number>> = {
  second: 2,
  third: 3,
  fourth: 4,
  fifth: 5,
  sixth: 6,
  '2nd': 2,
  '3rd': 3,
  '4th': 4,
  '5th': 5,
  '6th': 6,
}
const count = `(${Object.keys(counts).join('|')}|\\d)`
const rank = `(${Object.keys(ranks).join('|')})`
const year = String.raw`(?:years?|yrs?|seasons?)`

/** What each form names, and how many years later the year in question comes: after two years is in the third. */
const forms = [
  { form: new RegExp(String.raw`\b(?:past|beyond|after) ${year} ${count}\b`, 'u'), later: 1 },
  {
    form: new RegExp(String.raw`\b(?:past|beyond|after) (?:the |their |her )?${rank} (?:laying )?${year}\b`, 'u'),
    later: 1,
  },
  {
    form: new RegExp(
      String.raw`\b(?:past|beyond|after|in) (?:the |their |her )?(?:first )?${count} ${year}(?! old)\b`,
      'u',
    ),
    later: 1,
  },
  { form: new RegExp(String.raw`\b${year} ${count}\b`, 'u'), later: 0 },
  { form: new RegExp(String.raw`\b${rank} (?:laying )?${year}\b`, 'u'), later: 0 },
  { form: new RegExp(String.raw`\b${count} ${year} olds?\b`, 'u'), later: 0 },
] as const

/** Later than this nobody reckons. */
const last = 10

/** @param words folded, as a reading has them */
export function yearIn(words: readonly string[]): number | undefined {
  const text = words.join(' ')
  for (const { form, later } of forms) {
    const said = form.exec(text)?.[1]
    if (said === undefined) continue
    const found = (ranks[said] ?? counts[said] ?? Number(said)) + later
    if (found >= 1 && found <= last) return found
  }
  return undefined
}
