import type { Calculation } from "../../src/core/calculation.ts";

/** What a calculation says of itself apart from its sentences and its example: key, units, limits, source. */
export function calculationWords({ key, unit, inputs, source, rounding, caution }: Calculation) {
	const limits = Object.entries(inputs).map(
		([name, { unit: each, min, max }]) => `${name} [${each}] ${min ?? ""}..${max ?? ""}`,
	);
	return [
		key,
		`[${unit}]`,
		`of ${limits.join(", ")}`,
		`${source.mark}: ${source.url ?? source.place ?? ""}`,
		rounding && "rounded",
		caution && "with a caution",
	]
		.filter(Boolean)
		.join("; ");
}
