/** How a label states strength. */
export const strengthMeasures = [
	"pct_w_v",
	"pct_w_w",
	"pct_naocl_w_v",
	"pct_naocl_w_w",
	"mg_per_l",
	"g_per_l",
	"chlorometric_degree",
	"g_per_tablet",
] as const;
export type StrengthMeasure = (typeof strengthMeasures)[number];
