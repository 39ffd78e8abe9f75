import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { amount, day, wholeAmount, words } from "./computedValues.ts";

const expected = (label: string, unit: string, help: string) =>
	computed({ label, unit, value: amount(), decimals: 1, help });
const setAside = (label: string, unit: string, help: string, decimals = 0) =>
	computed({ label, unit, value: amount(), decimals, rounds: "up", help });

/** One row a day. What is set aside for the whole period is in week-total.csv. */
export const dayPlanSheet = sheet({
	file: "day-plan.csv",
	title: say`The plan, day by day`,
	about: say`What each day is expected to bring, and what to set aside for it.`,
	columns: {
		date: computed({ label: say`Date`, unit: "", value: day(), help: say`The day.` }),
		births_expected: expected(say`Births, expected`, say`births`, say`Mean number of births.`),
		births_set_aside: setAside(
			say`Births, set aside`,
			say`births`,
			say`As many as the plan is made for.`,
		),
		kits_used_expected: expected(say`Kits used, expected`, say`kits`, say`Kits used on a baby.`),
		kits_expired_expected: expected(
			say`Kits gone out of date, expected`,
			say`kits`,
			say`Ready kits that were not used in time.`,
		),
		kits_to_reprocess_expected: expected(
			say`Kits to reprocess, expected`,
			say`kits`,
			say`Used and out of date together.`,
		),
		kits_to_reprocess_set_aside: setAside(
			say`Kits to reprocess, set aside`,
			say`kits`,
			say`As many as the plan is made for.`,
		),
		kits_needed: computed({
			label: say`Kits needed`,
			unit: say`kits`,
			value: wholeAmount(),
			decimals: 0,
			help: say`Kits the unit must own so that one is ready.`,
		}),
		kits_in_service: computed({
			label: say`Kits in service`,
			unit: say`kits`,
			value: wholeAmount(),
			decimals: 0,
			help: say`Kits the unit has in service.`,
		}),
		rounds_expected: expected(
			say`Rounds that run, expected`,
			say`rounds`,
			say`Rounds with at least one kit.`,
		),
		rounds_set_aside: setAside(
			say`Rounds that run, set aside`,
			say`rounds`,
			say`As many as the plan is made for.`,
		),
		solution_litres_expected: expected(
			say`Solution, expected`,
			"L",
			say`Chlorine solution to mix.`,
		),
		solution_litres_set_aside: setAside(
			say`Solution, set aside`,
			"L",
			say`Chlorine solution to be ready to mix.`,
			1,
		),
		chlorine_product: computed({
			label: say`Product`,
			unit: "",
			value: words(),
			help: say`The product in use.`,
		}),
		chlorine_quantity_set_aside: setAside(
			say`Product, set aside`,
			say`mL, g or tablets`,
			say`Product to have at hand, as it is measured out.`,
		),
		boiled_litres_expected: expected(say`Boiled water, expected`, "L", say`For the rinse buckets.`),
		boiled_litres_set_aside: setAside(
			say`Boiled water, set aside`,
			"L",
			say`To have cooled in time.`,
			1,
		),
		boiled_buckets_set_aside: setAside(
			say`Boiled water, set aside`,
			say`buckets`,
			say`Rinse buckets to fill.`,
		),
		vinegar_litres_expected: expected(say`Vinegar, expected`, "L", say`For descaling baths.`),
		vinegar_litres_set_aside: setAside(say`Vinegar, set aside`, "L", say`To have at hand.`, 1),
		gauze_pieces_expected: expected(
			say`Gauze, expected`,
			say`pieces`,
			say`All items of the group gauze.`,
		),
		gauze_pieces_set_aside: setAside(
			say`Gauze, set aside`,
			say`pieces`,
			say`All items of the group gauze.`,
		),
	},
});
