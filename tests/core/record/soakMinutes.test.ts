import { expect, test } from "vitest";
import { soakMinutes } from "../../../src/core/record/soakMinutes.ts";

const clock = (text: string | null) => {
	const [hours, minutes] = (text ?? "").split(":").map(Number);
	return text === null ? null : (hours as number) * 60 + (minutes as number);
};

test.each<[string, string | null, string | null, number | null | undefined]>([
	["08:00", "08:30", "08:50", 20],
	["22:30", "23:50", "00:10", 20],
	["22:30", "00:10", "00:10", 0],
	["08:00", "08:50", "08:30", null],
	["08:00", "08:00", "20:00", 720],
	["08:00", "08:00", "20:01", null],
	["08:00", null, "08:50", undefined],
	["08:00", "08:30", null, undefined],
])(
	"of a round that began at %s, in at %s and out at %s: %s minutes",
	(start, into, out, minutes) => {
		const soak = { start: clock(start) as number, soak_in: clock(into), soak_out: clock(out) };
		expect(soakMinutes(soak)).toBe(minutes);
	},
);
