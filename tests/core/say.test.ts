import { expect, test } from "vitest";
import { say } from "../../src/core/say.ts";

test.each([
	[say`Used until ${"févr."}.`, "Used until févr."],
	[say`Used until ${"March"}.`, "Used until March."],
	[say`From ${"févr."} to ${"mars"}.`, "From févr. to mars."],
	[say`${"févr."}, or ${2.5} L`, "févr., or 2.5 L"],
	[say`nothing to put in`, "nothing to put in"],
	[say.safety`No ${"soap"} in it.`, "No soap in it."],
])("%s", (said, wanted) => {
	expect(said).toBe(wanted);
});
