-- One line for each row that a total adds up, with all that it adds; '' stands where a row says nothing.
SELECT shop, month, currency, file, COALESCE(bath, 'no bath') AS bath, '' AS claim,
  CASE WHEN kind = 'concentrate' THEN COALESCE(concentrate, 'no concentrate') ELSE '' END AS concentrate,
  cost_cents,
  0 AS claim_cents,
  0 AS loads,
  0.0E0 AS baskets,
  CASE WHEN kind = 'concentrate' THEN liters END AS concentrate_liters,
  CASE WHEN kind = 'water' AND purpose <> 'opening' THEN liters END AS water_liters,
  CASE WHEN kind = 'concentrate' AND purpose = 'top-up' THEN 1 ELSE 0 END AS top_ups,
  0 AS baths,
  0 AS baths_judged,
  0 AS baths_growing,
  CASE WHEN cost_cents IS NULL THEN 1 ELSE 0 END AS unpriced,
  0 AS uncounted,
  CASE WHEN liters IS NULL AND COALESCE(kind, '') <> 'water' THEN 1 ELSE 0 END AS unmeasured,
  CASE WHEN liters IS NULL AND COALESCE(kind, '') <> 'concentrate' THEN 1 ELSE 0 END AS water_unmeasured,
  0 AS provisional
FROM additions
UNION ALL
SELECT shop, month, currency, file, COALESCE(bath, 'no bath'), '', '',
  cost_cents, 0, 0, 0.0E0, NULL, NULL, 0, 0, 0, 0,
  CASE WHEN cost_cents IS NULL THEN 1 ELSE 0 END, 0, 0, 0, 0
FROM costs
UNION ALL
SELECT shop, month, currency, file, COALESCE(bath, 'no bath'), COALESCE(claim, 'no claim'), '',
  0, 0, 1, baskets, NULL, NULL, 0, 0, 0, 0,
  0, CASE WHEN baskets IS NULL THEN 1 ELSE 0 END, 0, 0, 0
FROM loads
UNION ALL
SELECT shop, month, currency, file, COALESCE(bath, 'no bath'), '', '',
  0, 0, 0, 0.0E0, NULL, fill_water_liters, 0, 1,
  CASE WHEN top_ups_grow IS NULL THEN 0 ELSE 1 END,
  CASE WHEN top_ups_grow THEN 1 ELSE 0 END,
  0, 0, 0, CASE WHEN fill_water_liters IS NULL THEN 1 ELSE 0 END, 0
FROM baths
UNION ALL
SELECT shop, month, currency, file, '', COALESCE(claim, 'no claim'), '',
  0, cost_cents, 0, 0.0E0, NULL, NULL, 0, 0, 0, 0,
  0, 0, 0, 0, CASE WHEN is_provisional THEN 1 ELSE 0 END
FROM claims
