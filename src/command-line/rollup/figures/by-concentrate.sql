-- What was poured of each concentrate.
SELECT shop, concentrate, currency,
  CAST(SUM(COALESCE(cost_cents, 0)) AS BIGINT) AS cost_cents,
  SUM(COALESCE(concentrate_liters, 0)) AS concentrate_liters,
  CAST(SUM(top_ups) AS BIGINT) AS top_ups,
  CAST(SUM(unpriced) AS BIGINT) AS unpriced,
  CAST(SUM(unmeasured) AS BIGINT) AS unmeasured
FROM amounts
WHERE concentrate <> ''
GROUP BY shop, concentrate, currency
ORDER BY shop, concentrate, currency
