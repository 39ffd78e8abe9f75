-- The lists of a district, or of many districts, added up by DuckDB.
--
--   cd the folder with the lists; duckdb < units.sql
--
-- For many districts, each in a folder of its own, write '*/units-needs.csv' for 'units-needs.csv',
-- and so on; for files in object storage, 's3://bucket/*/units-needs.csv' (after: INSTALL httpfs; LOAD httpfs;).
-- What no unit knows is blank in the lists, and so in no sum. Columns that a sum or an order needs have
-- their type here, because a column that is blank in every row tells none.

CREATE OR REPLACE VIEW units AS
	SELECT * FROM read_csv('units.csv', header = true, nullstr = '', types = {
		'births_expected': 'DOUBLE', 'kits_needed': 'DOUBLE', 'kits_in_service': 'DOUBLE',
		'unmet_per_1000_uses': 'DOUBLE', 'orders_late': 'INTEGER', 'first_run_out': 'DATE'});
CREATE OR REPLACE VIEW needs AS
	SELECT * FROM read_csv('units-needs.csv', header = true, nullstr = '', types = {
		'usable': 'DOUBLE', 'on_order': 'DOUBLE', 'target_stock': 'DOUBLE', 'need': 'DOUBLE',
		'pack_size': 'DOUBLE', 'order_packs': 'DOUBLE', 'run_out_on': 'DATE', 'order_by': 'DATE'});
CREATE OR REPLACE VIEW months AS
	SELECT * FROM read_csv('units-trend.csv', header = true, nullstr = '', types = {
		'month': 'VARCHAR', 'planned_expected': 'DOUBLE', 'done': 'DOUBLE', 'change': 'DOUBLE'});

-- How the units stand.
SELECT state, count(*) AS units, sum(births_expected) AS births, sum(kits_needed) AS kits_needed,
	sum(kits_in_service) AS kits_in_service, max(unmet_per_1000_uses) AS worst_per_1000
FROM units GROUP BY state ORDER BY state;

-- What all need together, as units-order.csv has it; packs once for all, before the district's own store.
SELECT item, measure, count(DISTINCT path) AS units,
	count(DISTINCT path) FILTER (need > 0) AS units_short,
	sum(usable) AS usable, sum(on_order) AS on_order, sum(target_stock) AS target_stock,
	sum(need) AS need, max(pack_size) AS pack_size,
	ceil(coalesce(sum(need), 0) / max(pack_size) - 1e-9) AS order_packs,
	sum(order_packs) AS unit_packs, min(run_out_on) AS run_out_on, min(order_by) AS order_by
FROM needs GROUP BY item, measure ORDER BY item, measure;

-- The months, as units-month.csv has them.
SELECT month, measure, measure_unit,
	count(DISTINCT path) FILTER (planned_expected IS NOT NULL) AS units_planned,
	sum(planned_expected) AS planned_expected,
	count(DISTINCT path) FILTER (done IS NOT NULL) AS units_done, sum(done) AS done,
	count(DISTINCT path) FILTER ("change" IS NOT NULL) AS units_both, sum("change") AS "change"
FROM months GROUP BY month, measure, measure_unit ORDER BY month, measure;

-- Where to go first: units with late orders, and those where a kit is most often missing.
SELECT unit, path, state, orders_late, first_run_out, first_run_out_item, unmet_per_1000_uses, in_words
FROM units WHERE state <> 'in_order'
ORDER BY state = 'not_read' DESC, orders_late DESC NULLS LAST, unmet_per_1000_uses DESC NULLS LAST LIMIT 50;
