// test/chiSquare.ts: counts held against shares by Pearson's chi-square.

/** Upper 1 % points of chi-square, by degrees of freedom. Source: any printed table, e.g. Fisher & Yates, table IV (from memory). */
const onePercent: readonly number[] = [0, 6.635, 9.21, 11.345, 13.277, 15.086]

/**
 * Chi-square of counts against shares; a class of share 0 with a count makes it infinite.
 *
 * @param counts observed, by class
 * @param shares expected, by class, summing to 1
 */
export function chiSquare(
  counts: Readonly<Record<string, number>>,
  shares: Readonly<Record<string, number>>,
): { readonly value: number; readonly limit: number } {
  const total = Object.values(counts).reduce((sum, n) => sum + n, 0)
  const classes = [...new Set([...Object.keys(counts), ...Object.keys(shares)])].filter(
    (name) => (shares[name] ?? 0) > 0 || (counts[name] ?? 0) > 0,
  )
  const value = classes.reduce((sum, name) => {
    const expected = total * (shares[name] ?? 0)
    return sum + ((counts[name] ?? 0) - expected) ** 2 / expected
  }, 0)
  return { value, limit: onePercent[classes.length - 1] ?? Number.NaN }
}
