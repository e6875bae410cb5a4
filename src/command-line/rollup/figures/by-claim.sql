-- What each claim pays, and its loads.
SELECT shop, claim, currency,
  CAST(SUM(COALESCE(claim_cents, 0)) AS BIGINT) AS claim_cents,
  CAST(SUM(loads) AS BIGINT) AS loads,
  SUM(COALESCE(baskets, 0)) AS baskets,
  CAST(SUM(uncounted) AS BIGINT) AS uncounted,
  CAST(SUM(provisional) AS BIGINT) AS provisional
FROM amounts
WHERE claim <> ''
GROUP BY shop, claim, currency
ORDER BY shop, claim, currency
