import { expect, test } from "vitest";
import { changeOfLevel } from "../../../src/core/forecast/changeOfLevel.ts";

/** Days of a register as "births × days", one after the other; "-" for days not recorded. */
function register(text: string): (number | null)[] {
	return text.split(" ").flatMap((run) => {
		const [births = "", days = "1"] = run.split("x");
		return Array.from({ length: Number(days) }, () => (births === "-" ? null : Number(births)));
	});
}

// From 4 to 10 a day each tells 10 ln 1.4 − 0.4 × 4 = 1.76 at first: over 6 within four days, told in a week.
test.each<[string, string, number, [number, number, number, number] | undefined]>([
	["none", "4x60", 0, undefined],
	["up", "4x40 10x20", 0, [40, 46, 4, 10]],
	["down: 10 × 0.286 − 4 ln 1.4 = 1.51", "10x40 4x20", 0, [40, 46, 10, 4]],
	[
		"the first four weeks are the level so far, whatever they say",
		"4x27 10x20",
		0,
		[28, 34, 118 / 28, 10],
	],
	["from the first day after four weeks", "4x28 10x20", 0, [28, 34, 4, 10]],
	["days not recorded are passed over", "4x20 -x9 4x20 -x3 10x20", 0, [52, 58, 4, 10]],
	["of fewer than seven days is none yet", "4x40 10x6", 0, undefined],
	["of seven days is one", "4x40 10x7", 0, [40, 46, 4, 10]],
	["one odd day is none", "4x40 90 4x20", 0, undefined],
	["days gone by between are no week of their own", "4x40 10x3 -x10 10x4", 0, [40, 53, 4, 10]],
	["twice: the last one counts", "4x40 10x40 4x20", 0, [80, 86, 10, 4]],
	["evidence that is used up begins anew", "4x40 9 2x9 10x20", 0, [50, 56, 187 / 50, 10]],
	["wild days tell less", "4x40 10x7", 1, undefined],
])("a change of level: %s", (_what, days, daySpread, expected) => {
	const found = changeOfLevel(register(days), [1], daySpread);
	const told = found && [found.beganOn, found.toldOn, found.before, found.after];
	expect(told).toEqual(expected);
});

test("busy weekdays are no change, and levels are those of a mean day", () => {
	const factors = [0.5, 1.5];
	const days = (level: number, count: number) =>
		Array.from({ length: count }, (_, day) => level * (factors[day % 2] as number));
	expect(changeOfLevel(days(4, 60), factors, 0)).toBeUndefined();
	expect(changeOfLevel([...days(4, 40), ...days(10, 20)], factors, 0)).toMatchObject({
		toldOn: 46,
		before: 4,
		after: 10,
	});
});
