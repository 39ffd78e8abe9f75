import { expect, test } from "vitest";
import { settingGroups, settings } from "../../../src/core/sheets/settings.ts";

test("every setting stands under one subject, in the order of settings.csv", () => {
	expect(settingGroups.flatMap(({ keys }) => keys)).toEqual(Object.keys(settings));
	for (const { title, keys } of settingGroups) expect(keys, title).not.toEqual([]);
});
