-- The same by the month in which it was poured, washed or billed; a bath counts in the month of its opening.
SELECT shop, month, currency,
  CAST(SUM(COALESCE(cost_cents, 0)) AS BIGINT) AS cost_cents,
  CAST(SUM(loads) AS BIGINT) AS loads,
  SUM(COALESCE(baskets, 0)) AS baskets,
  SUM(COALESCE(concentrate_liters, 0)) AS concentrate_liters,
  CAST(SUM(top_ups) AS BIGINT) AS top_ups,
  CAST(SUM(baths) AS BIGINT) AS baths,
  CASE WHEN SUM(baskets) > 0 AND SUM(unpriced) + SUM(uncounted) = 0
    THEN CAST(SUM(COALESCE(cost_cents, 0)) AS DOUBLE) / SUM(baskets) END AS cents_per_basket,
  CASE WHEN SUM(baskets) > 0 AND SUM(unmeasured) + SUM(uncounted) = 0
    THEN SUM(COALESCE(concentrate_liters, 0)) / SUM(baskets) END AS liters_per_basket,
  CAST(SUM(unpriced) AS BIGINT) AS unpriced,
  CAST(SUM(uncounted) AS BIGINT) AS uncounted,
  CAST(SUM(unmeasured) AS BIGINT) AS unmeasured
FROM amounts
WHERE claim = '' OR loads = 1
GROUP BY shop, month, currency
ORDER BY shop, month, currency
