import { describe, expect, test } from "vitest";
import { choice, yesNo } from "../../../src/core/values/choice.ts";
import { mark } from "../../../src/core/values/mark.ts";
import { LONGEST_NAME, name } from "../../../src/core/values/name.ts";
import { LONGEST_NOTE, note } from "../../../src/core/values/note.ts";
import { number } from "../../../src/core/values/number.ts";
import { optional } from "../../../src/core/values/valueKind.ts";

describe("name", () => {
	test.each([
		["gauze", "gauze"],
		["  gauze squares ", "gauze squares"],
		["x".repeat(LONGEST_NAME), "x".repeat(LONGEST_NAME)],
	])("%j is a name", (text, value) => {
		expect(name().schema.parse(text)).toBe(value);
	});

	test.each(["", "   ", "x".repeat(LONGEST_NAME + 1)])("%j is not", (text) => {
		expect(name().schema.safeParse(text).success).toBe(false);
	});
});

describe("note", () => {
	test.each(["", "  spaces stay ", "<script>alert(1)</script>", "x".repeat(LONGEST_NOTE)])(
		"%j is kept as it is",
		(text) => {
			expect(note().schema.parse(text)).toBe(text);
		},
	);

	test("a longer one is refused", () => {
		expect(note().schema.safeParse("x".repeat(LONGEST_NOTE + 1)).success).toBe(false);
	});
});

describe("mark", () => {
	test.each([
		["", ""],
		["   ", ""],
		["  L 1 ", "L 1"],
	])("%j is %j", (text, value) => {
		expect(mark().schema.parse(text)).toBe(value);
	});

	test("one as long as no note may be is refused", () => {
		expect(mark().schema.safeParse("x".repeat(LONGEST_NOTE + 1)).success).toBe(false);
	});
});

describe("choice", () => {
	const kind = choice(["in_rounds", "after_each_use"]);
	test.each(["in_rounds", "IN_ROUNDS", "  In_Rounds "])("%j is in_rounds", (text) => {
		expect(kind.schema.parse(text)).toBe("in_rounds");
	});

	test.each(["", "rounds", "in round", "in’rounds", "après'chaque'utilisation", "constructor"])(
		"%j is refused",
		(text) => {
			expect(kind.schema.safeParse(text).success).toBe(false);
		},
	);

	test("a word that pages show for it means it, whatever its apostrophe, spaces and accents' form", () => {
		const roles = choice(["manager", "storekeeper"]);
		for (const text of ["Unit manager", "Responsable de l’unité", "responsable de l'unité "])
			expect(roles.schema.parse(text)).toBe("manager");
		expect(roles.schema.parse("responsable\u00a0de l’unité".normalize("NFD"))).toBe("manager");
		for (const text of ["responsable de lunité", "responsablede l'unité"])
			expect(roles.schema.safeParse(text).success, text).toBe(false);
	});

	test("says its options", () => {
		expect(kind.allowed).toBe("one of: in_rounds, after_each_use");
		expect(kind.numeric).toBe(false);
		expect(kind.tableSchema).toEqual({
			type: "string",
			constraints: { enum: ["in_rounds", "after_each_use"] },
		});
		expect(yesNo().options).toEqual(["yes", "no"]);
	});
});

describe("optional", () => {
	const kind = optional(number({ min: 0, max: 5 }));
	test.each([
		["", null],
		["  ", null],
		["2,5", 2.5],
	])("%j is %s", (text, value) => {
		expect(kind.schema.parse(text)).toBe(value);
	});

	test("a bad text is refused, not taken for blank", () => {
		expect(kind.schema.safeParse("two").success).toBe(false);
	});

	test("blank is written for what is not given", () => {
		expect([kind.write(null), kind.write(2.5)]).toEqual(["", "2.5"]);
		expect(kind.allowed).toBe("a number from 0 to 5, or blank");
	});
});
