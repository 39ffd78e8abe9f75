import { expect, test } from "vitest";
import { containerLitres } from "../../../src/core/chlorine/containerLitres.ts";

test.each([
	["its own between those found on wards", 12, [1, 2, 3, 5, 10, 12, 15, 20]],
	["one of those found once", 5, [1, 2, 3, 5, 10, 15, 20]],
	["only those found where its own is not known", undefined, [1, 2, 3, 5, 10, 15, 20]],
])("sizes that amounts are given for: %s", (_what, own, sizes) => {
	expect(containerLitres(own)).toStrictEqual(sizes);
});
