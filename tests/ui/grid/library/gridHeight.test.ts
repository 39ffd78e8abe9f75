import { afterAll, beforeAll, expect, test, vi } from "vitest";
import type { GridModel } from "../../../../src/ui/grid/gridModel.ts";
import { gridHeight } from "../../../../src/ui/grid/library/gridHeight.ts";

beforeAll(() => {
	vi.stubGlobal("window", { innerHeight: 740 });
	vi.stubGlobal("document", { documentElement: {} });
	vi.stubGlobal("getComputedStyle", () => ({ fontSize: "16px" }));
});
afterAll(() => void vi.unstubAllGlobals());

const rows = (rowCount: number) =>
	({ headerHeight: 46, rowCount, rowHeight: () => 46 }) as unknown as GridModel;

// 72 of 100 of a phone's 740 px are 533 px; 18 px are for the bar that scrolls.
test("all rows where they fit, or nearly; else the share of the screen", () => {
	expect(gridHeight(rows(9), 0.72)).toBe(46 + 18 + 9 * 46);
	expect(gridHeight(rows(10), 0.72)).toBe(46 + 18 + 10 * 46);
	expect(gridHeight(rows(11), 0.72)).toBe(533);
	expect(gridHeight(rows(40), 0.72)).toBe(533);
});
