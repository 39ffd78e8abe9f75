import { expect, test } from "vitest";
import { afterRound } from "../../../../src/ui/subjects/bench/afterRound.ts";
import { unitWith } from "../../../core/smallUnit.ts";

const said = (soak: string, reading = "") =>
	afterRound(
		unitWith(
			{ soak_minutes: 20, target_strength_pct: 0.5 },
			{
				"rounds-done.csv": `date,start,ended,kits,product,lot,litres,strength_reading_pct,soak_in,soak_out,descaled,done_by,released_by,note
					2027-03-01,07:00,,C,,,,${reading},${soak},no,,,`,
			},
		),
		"2027-03-01",
		"07:00",
	);

test("after a round each kit is tested", () => {
	expect(said("08:00,08:20", "0.5")).toBe("Test each kit before it counts as ready.");
	expect(said(",")).toBe("Test each kit before it counts as ready.");
});

test("what was too short or too weak is said where it is written down, and what to do", () => {
	expect(said("08:00,08:09")).toBe(
		"The soak took 9 min, and at least 20 are wanted: these kits go through a round again before they are used.",
	);
	expect(said("08:00,08:25", "0.4")).toMatch(/^Test each kit .* The strength read was 0\.4 %/);
});
