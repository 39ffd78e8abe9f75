import { expect, test } from "vitest";
import type { Method } from "../../../../src/core/methods/method.ts";
import { isSterile, readyLifeDaysOf } from "../../../../src/core/plan/methods/readyLifeDaysOf.ts";
import { readSettings } from "../../../../src/core/read/readSettings.ts";

test.each<[boolean, Method[]]>([
	[true, ["autoclave"]],
	[true, ["autoclave", "single_use"]],
	[true, ["single_use"]],
	[false, ["autoclave", "steam"]],
	[false, ["single_use", "chlorine"]],
])("sterile: %s, where pieces are treated by %j", (sterile, methods) => {
	expect(isSterile({ methods, pieces: [] })).toBe(sterile);
});

test.each<[string, Method[] | undefined]>([
	["sterile_life_days", ["autoclave"]],
	["sterile_life_days", ["autoclave", "single_use"]],
	["ready_life_days", ["autoclave", "steam"]],
	["ready_life_days", ["single_use"]],
	["ready_life_days", ["chlorine"]],
	["ready_life_days", undefined],
])("%s is how long kits are ready whose pieces are treated by %j", (key, methods) => {
	const { settings } = readSettings(undefined);
	expect(readyLifeDaysOf(settings, methods && { methods, pieces: [] })).toBe(
		settings[key as "ready_life_days"],
	);
});
