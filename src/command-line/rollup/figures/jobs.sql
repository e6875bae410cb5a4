-- Each log as one job: what it washed, weighted by soil, and what it took. Baskets of all jobs of a shop are weighted as
-- its last log has it, or they could not be compared. A job counts for nothing where left_out says why.
WITH ranked AS (
  SELECT shop, currency, weight_light, weight_medium, weight_heavy,
    ROW_NUMBER() OVER (
      PARTITION BY shop, currency
      ORDER BY CASE WHEN at_local IS NULL THEN 1 ELSE 0 END, at_local DESC, file
    ) AS place
  FROM logs
  WHERE weight_light IS NOT NULL AND weight_medium IS NOT NULL AND weight_heavy IS NOT NULL
),
washed AS (
  SELECT one.shop, one.currency, one.file,
    SUM(one.baskets * CASE one.soil
      WHEN 'light' THEN ranked.weight_light
      WHEN 'medium' THEN ranked.weight_medium
      WHEN 'heavy' THEN ranked.weight_heavy
    END) AS weighted_baskets,
    SUM(CASE WHEN one.baskets IS NULL THEN 1 ELSE 0 END) AS uncounted,
    SUM(CASE WHEN one.soil IN ('light', 'medium', 'heavy') THEN 0 ELSE 1 END) AS soil_unsaid,
    SUM(one.minutes) / 60.0E0 AS hours,
    SUM(CASE WHEN one.minutes IS NULL THEN 1 ELSE 0 END) AS untimed
  FROM loads one
  JOIN ranked ON ranked.shop = one.shop AND ranked.currency = one.currency AND ranked.place = 1
  GROUP BY one.shop, one.currency, one.file
),
taken AS (
  SELECT shop, currency, file,
    CAST(SUM(baths) AS DOUBLE) AS baths,
    SUM(COALESCE(concentrate_liters, 0)) AS concentrate_liters,
    SUM(COALESCE(water_liters, 0)) AS water_liters,
    CAST(SUM(COALESCE(cost_cents, 0)) AS DOUBLE) AS cents,
    SUM(unpriced) AS unpriced,
    SUM(unmeasured) AS unmeasured,
    SUM(water_unmeasured) AS water_unmeasured
  FROM amounts
  GROUP BY shop, currency, file
),
standing AS (
  SELECT shop, currency, file, SUM(CASE WHEN is_closed THEN 0 ELSE 1 END) AS open_baths
  FROM baths
  GROUP BY shop, currency, file
)
SELECT logs.shop AS shop, logs.currency AS currency, logs.file AS file,
  ranked.weight_light AS weight_light, ranked.weight_medium AS weight_medium, ranked.weight_heavy AS weight_heavy,
  washed.weighted_baskets AS weighted_baskets,
  taken.baths AS baths,
  CASE WHEN taken.unmeasured = 0 THEN taken.concentrate_liters END AS concentrate_liters,
  CASE WHEN taken.water_unmeasured = 0 THEN taken.water_liters END AS water_liters,
  CASE WHEN washed.untimed = 0 THEN washed.hours END AS hours,
  CASE WHEN taken.unpriced = 0 THEN taken.cents END AS cents,
  CASE
    WHEN ranked.shop IS NULL THEN 'no weights of soil'
    WHEN washed.file IS NULL THEN 'no loads'
    WHEN washed.uncounted > 0 THEN 'a load without a number of baskets'
    WHEN washed.soil_unsaid > 0 THEN 'a load without its soil'
    WHEN washed.weighted_baskets <= 0 THEN 'no baskets'
    WHEN standing.file IS NULL THEN 'no baths'
    WHEN standing.open_baths > 0 THEN 'a bath still open'
    ELSE ''
  END AS left_out
FROM logs
LEFT JOIN ranked ON ranked.shop = logs.shop AND ranked.currency = logs.currency AND ranked.place = 1
LEFT JOIN washed ON washed.shop = logs.shop AND washed.currency = logs.currency AND washed.file = logs.file
LEFT JOIN taken ON taken.shop = logs.shop AND taken.currency = logs.currency AND taken.file = logs.file
LEFT JOIN standing ON standing.shop = logs.shop AND standing.currency = logs.currency AND standing.file = logs.file
