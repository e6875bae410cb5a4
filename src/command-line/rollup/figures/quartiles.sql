-- What a job took for each weighted basket: the quartiles over a shop's jobs, by definition 7 of Hyndman and Fan (1996),
-- which is that of Excel's QUARTILE.INC: the value at place 1 + (jobs - 1) p, drawn straight between neighbors.
WITH rates AS (
  SELECT shop, currency, 'baths' AS measure, baths / weighted_baskets AS rate FROM jobs WHERE left_out = ''
  UNION ALL
  SELECT shop, currency, 'concentrate', concentrate_liters / weighted_baskets FROM jobs WHERE left_out = ''
  UNION ALL
  SELECT shop, currency, 'water', water_liters / weighted_baskets FROM jobs WHERE left_out = ''
  UNION ALL
  SELECT shop, currency, 'hours', hours / weighted_baskets FROM jobs WHERE left_out = ''
  UNION ALL
  SELECT shop, currency, 'cost', cents / weighted_baskets FROM jobs WHERE left_out = ''
),
placed AS (
  SELECT shop, currency, measure, rate,
    ROW_NUMBER() OVER (PARTITION BY shop, currency, measure ORDER BY rate) AS place,
    COUNT(*) OVER (PARTITION BY shop, currency, measure) AS jobs
  FROM rates
  WHERE rate IS NOT NULL
),
near AS (
  SELECT shop, currency, measure, rate, jobs,
    ABS(place - (1 + (jobs - 1) * 0.25E0)) AS from_lower,
    ABS(place - (1 + (jobs - 1) * 0.5E0)) AS from_middle,
    ABS(place - (1 + (jobs - 1) * 0.75E0)) AS from_upper
  FROM placed
)
SELECT shop, currency, measure,
  MAX(jobs) AS jobs,
  SUM(CASE WHEN from_lower < 1 THEN rate * (1 - from_lower) ELSE 0 END) AS lower_quartile,
  SUM(CASE WHEN from_middle < 1 THEN rate * (1 - from_middle) ELSE 0 END) AS median,
  SUM(CASE WHEN from_upper < 1 THEN rate * (1 - from_upper) ELSE 0 END) AS upper_quartile
FROM near
GROUP BY shop, currency, measure
ORDER BY shop, currency, measure
