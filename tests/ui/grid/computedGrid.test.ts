import { expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { computedGrid } from "../../../src/ui/grid/computedGrid.ts";
import { smallUnit } from "../../core/smallUnit.ts";

const twoKinds = {
	"kind-use.csv": "kind,uses_per_100_births\nbag set,8\nsuction set,20",
	"kinds.csv": "kind,piece,count\nbag set,bag,1\nsuction set,bulb,1",
	"kits.csv":
		"kit,kind,status,ready_since,note\nA,bag set,in_service,2027-02-27,\nB,suction set,in_service,2027-02-27,",
};
const gridOf = (file: string, changes = {}) => {
	const table = plan(smallUnit(changes)).tables[file];
	if (!table) throw new Error(`no ${file}`);
	return computedGrid(table);
};

test.each([
	["levers.csv", "change"],
	["day-cover.csv", "hour"],
	["kit-cover.csv", "kits"],
])("%s: where all kits are alike no column stands there for kinds", (file, first) => {
	const { columns, cell } = gridOf(file);
	expect(columns.map(({ key }) => key)).not.toContain("kind");
	expect(columns[0]?.key).toBe(first);
	expect(cell(0, 0).text).not.toBe("");
});

test.each(["levers.csv", "day-cover.csv", "kit-cover.csv"])(
	"%s: kinds that differ stand there",
	(file) => {
		const { columns, value } = gridOf(file, twoKinds);
		const at = columns.findIndex(({ key }) => key === "kind");
		expect(value?.(0, at)).toBe("bag set");
	},
);

test("a cell to sort by is blank where nothing stands in it", () => {
	const { columns, value } = gridOf("levers.csv");
	const at = columns.findIndex(({ key }) => key === "avoided_per_1000_uses");
	expect(value?.(0, at)).toBeUndefined();
	expect(value?.(1, at)).toBeGreaterThan(0);
});
