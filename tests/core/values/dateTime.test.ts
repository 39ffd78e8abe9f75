import { expect, test } from "vitest";
import { dateTime } from "../../../src/core/values/dateTime.ts";

const { schema, write } = dateTime();

// ISO 8601 puts a T between day and time, people a space or several.
test.each([
	["2027-03-01 07:30", "2027-03-01 07:30"],
	["2027-03-01T07:30", "2027-03-01 07:30"],
	[" 2027-03-01   7:30 ", "2027-03-01 07:30"],
	["2027-03-01", "2027-03-01"],
])("%j is %s", (text, written) => {
	expect(write(schema.parse(text))).toBe(written);
});

test.each(["2027-02-30 07:30", "2027-03-01 25:00", "07:30", "2027-03-01 07:30 or so", ""])(
	"%j is no moment",
	(text) => {
		expect(schema.safeParse(text).success).toBe(false);
	},
);
