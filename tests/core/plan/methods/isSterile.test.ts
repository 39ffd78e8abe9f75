import { expect, test } from "vitest";
import type { Method } from "../../../../src/core/methods/method.ts";
import { isSterile } from "../../../../src/core/plan/methods/readyLifeDaysOf.ts";

test.each<[boolean, Method[]]>([
	[true, ["autoclave"]],
	[true, ["autoclave", "single_use"]],
	[true, ["single_use"]],
	[false, ["autoclave", "steam"]],
	[false, ["single_use", "chlorine"]],
])("sterile: %s, where pieces are treated by %j", (sterile, methods) => {
	expect(isSterile({ methods, pieces: [] })).toBe(sterile);
});
