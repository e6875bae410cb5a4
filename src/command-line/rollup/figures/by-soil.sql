-- What a basket and a load of each soil class took. What a bath took is laid on its baskets alike, whatever their soil,
-- so classes differ by the baths that they went into. Loads of a bath that lacks a figure are left out and counted.
WITH bath_totals AS (
  SELECT shop, currency, file, bath,
    CAST(SUM(COALESCE(cost_cents, 0)) AS DOUBLE) AS cents,
    SUM(COALESCE(concentrate_liters, 0)) AS liters,
    SUM(COALESCE(baskets, 0)) AS baskets,
    SUM(unpriced) + SUM(uncounted) + SUM(unmeasured) AS gaps
  FROM amounts
  WHERE bath <> ''
  GROUP BY shop, currency, file, bath
),
laid AS (
  SELECT one.shop, one.currency, COALESCE(one.soil, 'not said') AS soil, one.baskets,
    CASE WHEN one.bath IS NOT NULL AND whole.gaps = 0 AND whole.baskets > 0 THEN 1 ELSE 0 END AS is_whole,
    whole.cents / NULLIF(whole.baskets, 0) AS cents_each,
    whole.liters / NULLIF(whole.baskets, 0) AS liters_each
  FROM loads one
  JOIN bath_totals whole
    ON whole.shop = one.shop AND whole.currency = one.currency AND whole.file = one.file
    AND whole.bath = COALESCE(one.bath, 'no bath')
),
summed AS (
  SELECT shop, currency, soil,
    COUNT(*) AS loads,
    SUM(COALESCE(baskets, 0)) AS baskets,
    SUM(is_whole) AS loads_whole,
    SUM(CASE WHEN is_whole = 1 THEN baskets END) AS baskets_whole,
    SUM(CASE WHEN is_whole = 1 THEN baskets * cents_each END) AS cents,
    SUM(CASE WHEN is_whole = 1 THEN baskets * liters_each END) AS liters
  FROM laid
  GROUP BY shop, currency, soil
)
SELECT shop, soil, currency,
  CAST(loads AS BIGINT) AS loads,
  baskets,
  cents / NULLIF(baskets_whole, 0) AS cents_per_basket,
  liters / NULLIF(baskets_whole, 0) AS liters_per_basket,
  liters / NULLIF(loads_whole, 0) AS liters_per_load,
  CAST(loads - loads_whole AS BIGINT) AS loads_left_out
FROM summed
ORDER BY shop, soil, currency
