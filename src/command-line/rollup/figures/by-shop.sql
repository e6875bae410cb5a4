-- What each shop spent, washed and poured.
SELECT shop, currency,
  CAST(SUM(COALESCE(cost_cents, 0)) AS BIGINT) AS cost_cents,
  CAST(SUM(COALESCE(claim_cents, 0)) AS BIGINT) AS claim_cents,
  CAST(SUM(loads) AS BIGINT) AS loads,
  SUM(COALESCE(baskets, 0)) AS baskets,
  SUM(COALESCE(concentrate_liters, 0)) AS concentrate_liters,
  CAST(SUM(top_ups) AS BIGINT) AS top_ups,
  CAST(SUM(baths) AS BIGINT) AS baths,
  CASE WHEN SUM(baths) > 0 THEN CAST(SUM(top_ups) AS DOUBLE) / SUM(baths) END AS top_ups_per_bath,
  CAST(SUM(baths_judged) AS BIGINT) AS baths_judged,
  CAST(SUM(baths_growing) AS BIGINT) AS baths_growing,
  CASE WHEN SUM(baths_judged) > 0 THEN CAST(SUM(baths_growing) AS DOUBLE) / SUM(baths_judged) END AS growing_share,
  CASE WHEN SUM(baskets) > 0 AND SUM(unpriced) + SUM(uncounted) = 0
    THEN CAST(SUM(COALESCE(cost_cents, 0)) AS DOUBLE) / SUM(baskets) END AS cents_per_basket,
  CASE WHEN SUM(baskets) > 0 AND SUM(unmeasured) + SUM(uncounted) = 0
    THEN SUM(COALESCE(concentrate_liters, 0)) / SUM(baskets) END AS liters_per_basket,
  CAST(SUM(unpriced) AS BIGINT) AS unpriced,
  CAST(SUM(uncounted) AS BIGINT) AS uncounted,
  CAST(SUM(unmeasured) AS BIGINT) AS unmeasured,
  CAST(SUM(provisional) AS BIGINT) AS provisional
FROM amounts
GROUP BY shop, currency
ORDER BY shop, currency
