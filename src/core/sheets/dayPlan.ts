import { computed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { amount, day, wholeAmount, words } from "./computedValues.ts";

const expected = (label: string, unit: string, help: string) =>
	computed({ label: `${label}, expected`, unit, value: amount(), decimals: 1, help });
const setAside = (label: string, unit: string, help: string, decimals = 0) =>
	computed({ label: `${label}, set aside`, unit, value: amount(), decimals, help });

/** One row a day. What is set aside for the whole period is in week-total.csv. */
export const dayPlanSheet = sheet({
	file: "day-plan.csv",
	title: "The plan, day by day",
	about: "What each day is expected to bring, and what to set aside for it.",
	columns: {
		date: computed({ label: "Date", unit: "", value: day(), help: "The day." }),
		births_expected: expected("Births", "births", "Mean number of births."),
		births_set_aside: setAside("Births", "births", "As many as the plan is made for."),
		kits_used_expected: expected("Kits used", "kits", "Kits used on a baby."),
		kits_expired_expected: expected(
			"Kits gone out of date",
			"kits",
			"Ready kits that were not used in time.",
		),
		kits_to_reprocess_expected: expected(
			"Kits to reprocess",
			"kits",
			"Used and out of date together.",
		),
		kits_to_reprocess_set_aside: setAside(
			"Kits to reprocess",
			"kits",
			"As many as the plan is made for.",
		),
		kits_needed: computed({
			label: "Kits needed",
			unit: "kits",
			value: wholeAmount(),
			decimals: 0,
			help: "Kits the unit must own so that one is ready.",
		}),
		kits_in_service: computed({
			label: "Kits in service",
			unit: "kits",
			value: wholeAmount(),
			decimals: 0,
			help: "Kits the unit has in service.",
		}),
		rounds_expected: expected("Rounds that run", "rounds", "Rounds with at least one kit."),
		rounds_set_aside: setAside("Rounds that run", "rounds", "As many as the plan is made for."),
		solution_litres_expected: expected("Solution", "L", "Chlorine solution to mix."),
		solution_litres_set_aside: setAside(
			"Solution",
			"L",
			"Chlorine solution to be ready to mix.",
			1,
		),
		chlorine_product: computed({
			label: "Product",
			unit: "",
			value: words(),
			help: "The product in use.",
		}),
		chlorine_quantity_set_aside: setAside(
			"Product",
			"mL, g or tablets",
			"Product to have at hand, as it is measured out.",
		),
		boiled_litres_expected: expected("Boiled water", "L", "For the rinse buckets."),
		boiled_litres_set_aside: setAside("Boiled water", "L", "To have cooled in time.", 1),
		boiled_buckets_set_aside: setAside("Boiled water", "buckets", "Rinse buckets to fill."),
		vinegar_litres_expected: expected("Vinegar", "L", "For descaling baths."),
		vinegar_litres_set_aside: setAside("Vinegar", "L", "To have at hand.", 1),
		gauze_pieces_expected: expected("Gauze", "pieces", "All items of the group gauze."),
		gauze_pieces_set_aside: setAside("Gauze", "pieces", "All items of the group gauze."),
	},
});
