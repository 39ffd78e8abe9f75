import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { choice, yesNo } from "../values/choice.ts";
import { name } from "../values/name.ts";
import { number } from "../values/number.ts";
import { optional } from "../values/valueKind.ts";

/** Items that are counted together. */
export const itemGroups = ["gauze", "gloves", "other"] as const;
export type ItemGroup = (typeof itemGroups)[number];

export const itemsSheet = sheet({
	file: "items.csv",
	title: say`Items of the store`,
	about: say`Everything that is ordered: how it is measured, packed, priced and delivered.`,
	unique: ["item"],
	columns: {
		item: typed({ label: say`Item`, unit: "", value: name(), help: say`What it is called here.` }),
		group: typed({
			label: say`Group`,
			unit: "",
			value: choice(itemGroups),
			fallback: "other",
			help: say`The week plan adds up the group gauze.`,
		}),
		measure: typed({
			label: say`Measure`,
			unit: "",
			value: name(),
			help: say`Unit of every quantity of this item: piece, pair, mL, L, g, kg, tablet.`,
		}),
		pack_size: typed({
			label: say`Pack size`,
			unit: say`in the item's measure`,
			value: number({ min: 0.000001, max: 1_000_000 }),
			fallback: 1,
			decimals: 2,
			help: say`How much is in one pack.`,
		}),
		pack_price: typed({
			label: say`Price of a pack`,
			unit: say`currency`,
			value: optional(number({ min: 0, max: 1_000_000_000, as: "money" })),
			decimals: 2,
			help: say`Blank where it is not known.`,
		}),
		lead_days: typed({
			label: say`Days from order to delivery`,
			unit: say`days`,
			value: number({ min: 0, max: 366 }),
			fallback: 7,
			help: say`How long the store usually waits for it, at the longest.`,
		}),
		wastage_pct: typed({
			label: say`Wastage`,
			unit: "%",
			value: number({ min: 0, max: 90, as: "percent" }),
			fallback: 0,
			help: say`Share that is spilt, torn or thrown away.`,
		}),
		service_level: typed({
			label: say`How sure the stock should be`,
			unit: say`share`,
			value: number({ min: 0.5, max: 0.9999, as: "share" }),
			fallback: 0.95,
			decimals: 2,
			help: say`Chance that the stock lasts until the next delivery.`,
		}),
		lead_days_spread: typed({
			label: say`Days a delivery can be later`,
			unit: say`days`,
			value: number({ min: 0, max: 366 }),
			fallback: 0,
			help: say`Beyond the usual days, now and then. The store is planned to last that long too.`,
			added: true,
		}),
		shelf_life_days: typed({
			label: say`Keeps for`,
			unit: say`days`,
			value: optional(number({ min: 1, max: 10_000 })),
			help: say`From delivery to expiry, as a new lot usually has it; blank where it does not matter.`,
			added: true,
		}),
		depot_packs: typed({
			label: say`The depot sends at most`,
			unit: say`packs`,
			value: optional(number({ min: 0, max: 1_000_000, whole: true })),
			decimals: 0,
			help: say`With the order that is being made; blank where it sends all that is ordered.`,
			added: true,
		}),
		round_needs_it: typed({
			label: say`No safe round without it`,
			unit: "",
			value: optional(yesNo()),
			help: say`yes: it is ordered before all that a round can do without. Blank: yes for what goes for a round, load, kit, piece or person, no for what goes only by the day or for descaling. The chlorine product in use is always needed.`,
			added: true,
		}),
	},
});

export type ItemsRow = RowOf<typeof itemsSheet>;
