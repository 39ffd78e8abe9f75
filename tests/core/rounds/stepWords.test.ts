import { expect, test } from "vitest";
import { missingSorts } from "../../../src/core/rounds/stepWords.ts";

test("what no step is about is told where a list has any word that is known", () => {
	expect(missingSorts(["Wash in soapy water", "Soak", "Dry in the air"])).toEqual(["rinse"]);
	expect(missingSorts(["Wash", "Rinse"])).toEqual(["dry"]);
	expect(missingSorts(["Soak"])).toEqual(["wash", "rinse", "dry"]);
	expect(missingSorts(["zzz"])).toEqual([]);
});
