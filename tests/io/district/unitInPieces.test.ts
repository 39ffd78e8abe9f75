import { expect, test } from "vitest";
import { valueIn } from "../../../src/core/outcome.ts";
import { districtUnit, unitInPieces } from "../../../src/io/district/districtUnit.ts";
import { readFiles } from "../../../src/io/readFiles.ts";
import { zipTexts } from "../../../src/io/zipWorkbook.ts";
import { inventedUnit } from "../../district/inventedUnit.ts";

const read = () => readFiles([{ name: "unit.zip", bytes: zipTexts(inventedUnit(1)) }]);

test("a unit in pieces is the unit at once, and none of its pieces is most of it", () => {
	const pieces = unitInPieces("unit.zip", read(), "2027-03-01");
	let count = 0;
	let piece = pieces.next();
	for (; !piece.done; piece = pieces.next()) count++;
	const once = districtUnit("unit.zip", read(), "2027-03-01");
	expect(count).toBeGreaterThan(20);
	expect(piece.value.problems).toEqual(once.problems);
	expect(Object.values(piece.value.line).map(({ outcome }) => outcome)).toEqual(
		Object.values(once.line).map(({ outcome }) => outcome),
	);
});

test("where a file cannot be read nothing is planned", () => {
	const bytes = new TextEncoder().encode("PK");
	const unit = districtUnit("unit.zip", readFiles([{ name: "unit.zip", bytes }]), undefined);
	expect([valueIn(unit.line.state), unit.planned]).toEqual(["not_read", undefined]);
});
