import type { DistrictNamesRow } from "../sheets/districtNames.ts";

/** An item's name in the district: by the table of names, else as its unit writes it. */
export type ItemNames = (item: string) => string;

/**
 * Only what the table names is taken together: names are looked up as they are written,
 * once, so that two items are never one because they look alike.
 *
 * @example itemNames([{ item: "Gauze 10×10", name: "Gauze" }])("Gauze 10×10 ") // "Gauze"
 */
export function itemNames(table: readonly DistrictNamesRow[]): ItemNames {
	const names = new Map(table.map(({ item, name }) => [item, name]));
	return (item) => names.get(item.trim()) ?? item.trim();
}
