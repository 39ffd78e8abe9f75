import { expect, test } from "vitest";
import { withUsageTaken } from "../../../src/core/edit/withUsageTaken.ts";
import { smallUnit } from "../smallUnit.ts";

const unit = smallUnit({
	"usage.csv": "item,basis,quantity,note\ngauze squares,piece,2,\nvinegar,descale,1,by the cup",
});

test.each([
	[2, ["gauze squares", "piece", "2.5", "March"]],
	[3, ["vinegar", "descale", "2.5", "by the cup; March"]],
])("line %i has the quantity learned, and after its note where that is from", (line, row) => {
	const { tables } = withUsageTaken(unit, line, 2.5, "March");
	expect(tables["usage.csv"]?.rows[line - 2]).toEqual(row);
	expect(tables["usage.csv"]?.rows).toHaveLength(2);
});

test("a line that is not there changes nothing", () => {
	expect(withUsageTaken(unit, 4, 2.5, "March")).toBe(unit);
});
