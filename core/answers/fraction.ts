// core/answers/fraction.ts: a share of chicks in the words of a keeper.

const wordsFor: readonly (readonly [number, string])[] = [
  [1, 'all'],
  [1 / 2, 'half'],
  [1 / 4, 'a quarter'],
  [3 / 4, 'three quarters'],
  [1 / 8, '1 in 8'],
  [3 / 8, '3 in 8'],
  [5 / 8, '5 in 8'],
  [7 / 8, '7 in 8'],
  [1 / 3, 'a third'],
  [2 / 3, 'two thirds'],
  [1 / 16, '1 in 16'],
  [3 / 16, '3 in 16'],
  [9 / 16, '9 in 16'],
]

/** 0.5 -> 'half', 0.0625 -> '1 in 16', 0.47 -> 'about 47 in 100'. */
export function shareWords(share: number): string {
  const exact = wordsFor.find(([value]) => Math.abs(value - share) < 1e-6)
  if (exact) return exact[1]
  return share < 0.005 ? 'under 1 in 100' : `about ${Math.round(share * 100)} in 100`
}
