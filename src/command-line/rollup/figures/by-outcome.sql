-- Pieces by what became of them.
SELECT shop, COALESCE(outcome, 'not said') AS outcome,
  SUM(COALESCE(pieces, 0)) AS pieces,
  CAST(SUM(CASE WHEN pieces IS NULL THEN 1 ELSE 0 END) AS BIGINT) AS unquantified
FROM items
GROUP BY shop, COALESCE(outcome, 'not said')
ORDER BY shop, COALESCE(outcome, 'not said')
