import { describe, expect, test } from "vitest";
import type { Stopped } from "../../../src/core/stock/stopsWithout.ts";
import { type TakeStep, takeFirst, type WantedItem } from "../../../src/core/stock/takeFirst.ts";

/** "name price: days it runs out on with none, one, two … packs", "-" for none and "∞" where it lasts. */
function wanted(text: string, stops: Stopped = "safe_rounds"): WantedItem {
	const [name = "", days = ""] = text.split(": ");
	const [item = "", price = "-"] = name.split(" ");
	const outs = days.split(" ").map((day) => (day === "∞" ? null : Number(day)));
	return {
		item,
		stops,
		price: price === "-" ? null : Number(price),
		packs: outs.length - 1,
		runsOut: { each: 1, days: outs },
	};
}
const poorer = (text: string) => wanted(text, "less");
/** "2 soap" for what is paid for, "(2 soap)" for what is not. */
const said = ({ item, packs, paid }: TakeStep) =>
	paid ? `${packs} ${item}` : `(${packs} ${item})`;
const taken = (money: number | null, ...items: WantedItem[]) =>
	(takeFirst.compute({ items, money }) as TakeStep[]).map(said).join(", ");

describe("what to take first", () => {
	test.each<[string, WantedItem[], number | null, string]>([
		["nothing to order", [], 10, ""],
		["nothing of it to order", [wanted("soap 2: 5")], 10, ""],
		["all of it, without a limit", [wanted("soap -: 5 15 25")], null, "2 soap"],
		["all of it, with the money it costs", [wanted("soap 2: 5 15 25")], 4, "2 soap"],
		["one of it", [wanted("soap 2: 5 15 25")], 3.99, "1 soap, (1 soap)"],
		["none of it", [wanted("soap 2: 5 15 25")], 0, "(2 soap)"],
		["prices that only come near a sum", [wanted("soap 0.1: 5 6 7 8")], 0.3, "3 soap"],
		["what is given", [wanted("soap 0: 5 15 25")], 0, "2 soap"],
		[
			"by the day it runs out, pack after pack",
			[wanted("soap 2: 5 15 25"), wanted("gauze 1: 7 12 20"), wanted("gloves 4: 14 40")],
			null,
			"1 soap, 2 gauze, 1 gloves, 1 soap",
		],
		[
			"on one day by name, whatever the order of the list",
			[wanted("soap 2: 5 9"), wanted("gauze 1: 5 9"), wanted("gloves 4: 5 9")],
			7,
			"1 gauze, 1 gloves, 1 soap",
		],
		["what never runs out last", [wanted("a 1: ∞ ∞"), wanted("b 1: 90 ∞")], 1, "1 b, (1 a)"],
		[
			"what a round can do without last, however soon it runs out",
			[poorer("a 1: 0 3"), wanted("b 5: 90 ∞")],
			null,
			"1 b, 1 a",
		],
		[
			"a dear pack is left out and money goes on to the next",
			[wanted("a 9: 1 2"), wanted("b 2: 5 6 7")],
			5,
			"(1 a), 2 b",
		],
		[
			"but not to what a round can do without",
			[wanted("a 9: 1 2"), wanted("b 2: 5 6"), poorer("c 1: 0 3")],
			5,
			"(1 a), 1 b, (1 c)",
		],
		[
			"nor is it kept back once all of that is paid",
			[wanted("a 4: 1 2"), poorer("c 1: 0 3")],
			5,
			"1 a, 1 c",
		],
		[
			"disinfection comes like a round, by its day",
			[wanted("a 1: 3 4"), wanted("b 1: 2 5", "disinfection")],
			null,
			"1 b, 1 a",
		],
		[
			"descaling comes after",
			[wanted("a 1: 3 4", "descaling"), wanted("b 1: 9 10")],
			null,
			"1 b, 1 a",
		],
	])("%s", (_what, items, money, expected) => {
		expect(taken(money, ...items)).toBe(expected);
		expect(taken(money, ...items.toReversed())).toBe(expected);
	});

	test("of a large order several packs are taken at a time, and the money decides to the pack", () => {
		const many: WantedItem = {
			...wanted("a 1: 0"),
			packs: 25,
			runsOut: { each: 10, days: [1, 4, 6, 9] },
		};
		expect(taken(13, many, wanted("b 1: 2 3"))).toBe("10 a, 1 b, 2 a, (13 a)");
		expect(taken(null, many)).toBe("25 a");
	});

	test("a step knows its cost and the day without it", () => {
		const items = [wanted("soap 2: 5 15 25"), wanted("gauze 1: 7 12")];
		expect(takeFirst.compute({ items, money: null })).toEqual([
			{ item: "soap", packs: 1, cost: 2, day: 5, paid: true, spent: 2 },
			{ item: "gauze", packs: 1, cost: 1, day: 7, paid: true, spent: 3 },
			{ item: "soap", packs: 1, cost: 2, day: 15, paid: true, spent: 5 },
		]);
		expect(takeFirst.compute({ items: [wanted("a -: ∞ ∞")], money: null })).toMatchObject([
			{ cost: null, day: null, spent: null },
		]);
		// A pack without a price makes what is spent unknown from there on; what is not paid for adds nothing.
		expect(
			takeFirst.compute({ items: [wanted("a -: 1 2"), wanted("b 4: 2 3")], money: 3 }),
		).toMatchObject([{ spent: null }, { paid: false, spent: null }]);
		expect(
			takeFirst.compute({ items: [wanted("a -: 1 2"), wanted("b 4: 2 3")], money: null }),
		).toMatchObject([{ spent: null }, { paid: true, spent: null }]);
		expect(
			takeFirst.compute({ items: [wanted("a 4: 1 2"), wanted("b 1: 2 3 4")], money: 3 }),
		).toMatchObject([{ paid: false, spent: 0 }, { spent: 2 }]);
	});
});
