import { expect, test } from "vitest";
import { rowsOf } from "../../planCells.ts";
import { planOfStore } from "../oneItem.ts";

const soap = (usage: readonly string[], lots: readonly string[] = ["S1 4 - - - -"]) => {
	const row = rowsOf(planOfStore({ usage, lots }), "order.csv")[0];
	return (
		["use_expected", "target_stock", "order_packs", "cost", "run_out_on", "order_by"] as const
	)
		.map((column) => row?.[column]?.outcome)
		.map((outcome) =>
			outcome?.ok ? outcome.value : outcome?.problems.map(({ code }) => code).join(),
		);
};

test("an item that nothing is said of is not ordered as 0: a dash stands with the reason", () => {
	expect(new Set(soap([]))).toEqual(new Set(["use-not-listed"]));
});

test("whether it runs out before an order can arrive is then not known either", () => {
	const row = rowsOf(planOfStore({ usage: [] }), "order.csv")[0];
	expect(row?.emergency?.outcome).toEqual({ ok: true, value: null });
	const said = rowsOf(planOfStore({ lots: ["S1 4 - - - -"] }), "order.csv")[0];
	expect(said?.emergency?.outcome).toEqual({ ok: true, value: "yes" });
});

test("a line that says 0 is an answer, and so is a product that is not in use", () => {
	expect(soap(["soap,day,0,"])).toEqual([0, 0, 0, 0, "", ""]);
	const powder = rowsOf(planOfStore(), "order.csv").find(
		({ item }) => item?.outcome.ok && item.outcome.value === "powder",
	);
	expect(powder?.order_packs?.outcome).toEqual({ ok: true, value: 0 });
});
