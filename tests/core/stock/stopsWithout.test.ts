import { expect, test } from "vitest";
import type { Rates } from "../../../src/core/stock/ratesOfItem.ts";
import { isNeeded, stopped, stopsWithout } from "../../../src/core/stock/stopsWithout.ts";

const none: Rates = { perDay: 0, perRound: 0, perLoad: [0], perKit: [0], perDescale: 0 };
interface Asked {
	readonly rates: Rates;
	readonly newPieces: boolean;
	readonly isMixedFrom: boolean;
	readonly said: "yes" | "no" | null;
}

const nothing: Asked = { rates: none, newPieces: false, isMixedFrom: false, said: null };

test.each<[string, Partial<Asked>, string]>([
	["nothing goes", {}, "less"],
	["some goes by the day only", { rates: { ...none, perDay: 1 } }, "less"],
	["some goes for a round", { rates: { ...none, perRound: 1 } }, "safe_rounds"],
	["some goes for a load", { rates: { ...none, perLoad: [0, 1] } }, "safe_rounds"],
	["some goes for a kit", { rates: { ...none, perKit: [0, 1] } }, "safe_rounds"],
	["a new piece for each kit used", { newPieces: true }, "safe_rounds"],
	["some goes for a descaling", { rates: { ...none, perDescale: 1 } }, "descaling"],
	[
		"for a descaling and a round",
		{ rates: { ...none, perDescale: 1, perRound: 1 } },
		"safe_rounds",
	],
	["the list says that a round needs it", { said: "yes" }, "safe_rounds"],
	["the list says that it does not", { rates: { ...none, perRound: 1 }, said: "no" }, "less"],
	["nor does a new piece, then", { newPieces: true, said: "no" }, "less"],
	[
		"a descaling is asked for all the same",
		{ rates: { ...none, perDescale: 1 }, said: "no" },
		"descaling",
	],
	["the product in use, whatever the list says", { isMixedFrom: true, said: "no" }, "disinfection"],
])("%s", (_what, change, expected) => {
	expect(stopsWithout.compute({ ...nothing, ...change })).toBe(expected);
});

test("a round needs what disinfects and what it says it needs", () => {
	expect(stopped.filter(isNeeded)).toEqual(["disinfection", "safe_rounds"]);
});
