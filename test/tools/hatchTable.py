# test/tools/hatchTable.py: writes test/core/hen/hatchTable.json with another program than the one under test.
# Run: python3 test/tools/hatchTable.py > test/core/hen/hatchTable.json   (needs scipy)
import json
import platform
import scipy
from scipy.stats import betabinom, binom, nbinom

chances = [0.22, 0.343, 0.36, 0.375, 0.41, 0.5, 0.95]
wanted = [1, 2, 3, 6, 10, 12, 25, 100]
sure = [0.5, 0.8, 0.9, 0.95, 0.99]

rows = []
for p in chances:
    for k in wanted:
        for q in sure:
            eggs = int(k + nbinom.ppf(q, k, p))  # eggs beyond k until the k-th pullet: negative binomial
            # where a chance meets the wish to the last digit, rounding alone decides: such rows are left out
            if min(abs(binom.sf(k - 1, n, p) - q) for n in (eggs - 1, eggs)) > 1e-9:
                rows.append({"p": p, "wanted": k, "certainty": q, "eggs": eggs})

tails = []
for p in chances:
    for n, k in [(10, 1), (10, 8), (20, 12), (24, 6), (47, 13), (200, 80)]:
        tails.append({"p": p, "n": n, "atLeast": k, "chance": float(binom.sf(k - 1, n, p))})

varying = []
for mean, sd in [(0.7225, 0.12), (0.451, 0.18), (0.5, 0.05)]:
    s = mean * (1 - mean) / sd**2 - 1
    a, b = mean * s, (1 - mean) * s
    for n, k in [(10, 0), (10, 7), (24, 12), (46, 40), (100, 60)]:
        varying.append({"mean": mean, "between": sd, "n": n, "exactly": k, "chance": float(betabinom.pmf(k, n, a, b))})
    for pullet in [0.475, 0.5]:
        for n, k in [(10, 1), (24, 6), (46, 12)]:
            chance = sum(float(betabinom.pmf(h, n, a, b)) * float(binom.sf(k - 1, h, pullet)) for h in range(k, n + 1))
            varying.append({"mean": mean, "between": sd, "n": n, "pullet": pullet, "atLeast": k, "chance": chance})

print(json.dumps({
    "program": f"scipy {scipy.__version__}, Python {platform.python_version()}: nbinom.ppf, binom.sf, betabinom.pmf",
    "eggs": rows, "tails": tails, "varying": varying,
}, indent=1))
