import { describe, expect, test } from "vitest";
import { plan } from "../../src/core/plan/plan.ts";
import { headerOf } from "../../src/core/sheet.ts";
import { orderSheet } from "../../src/core/sheets/order.ts";
import { combineOrders } from "../../src/core/units/combineOrders.ts";
import { computedCsv } from "../../src/io/computedCsv.ts";
import { readOrder, readOrders } from "../../src/io/readOrders.ts";
import { valueIn } from "../core/planCells.ts";
import { smallUnit, unitWith } from "../core/smallUnit.ts";

const bytes = (text: string) => new TextEncoder().encode(text);
const header = headerOf(orderSheet).join(",");
const row = (item: string, target: number, unit = "A") =>
	`${item},piece,0,0,10,${target},1,100,2,2027-03-09,2027-03-02,0.5,,no,100,2,${unit}`;
const file = (...rows: string[]) => `${[header, ...rows].join("\r\n")}\r\n`;
const codes = (name: string, content: Uint8Array) =>
	readOrder({ name, bytes: content }).problems.map((p) => [p.code, p.file]);

describe("one unit's order file", () => {
	test("reads back what a plan writes, cell by cell", () => {
		const table = plan(smallUnit()).tables["order.csv"];
		if (!table) throw new Error("no order");
		const { order, problems } = readOrder({ name: "order.csv", bytes: bytes(computedCsv(table)) });
		expect(problems).toEqual([]);
		expect(order?.rows.rows.map(({ value }) => value.item)).toEqual(
			table.rows.map((cells) => valueIn(cells.item)),
		);
		table.rows.forEach((cells, i) => {
			const packs = valueIn(cells.order_packs);
			expect(order?.rows.rows[i]?.value.order_packs).toBe(packs);
			expect(order?.rows.rows[i]?.value.unit_name).toBe("Test unit");
		});
	});

	test.each([
		[
			"semicolons and decimal commas",
			file(row("gauze", 30)).replaceAll(",", ";").replace("0.5", "0,5"),
		],
		["a byte-order mark", `\ufeff${file(row("gauze", 30))}`],
		["tabs", file(row("gauze", 30)).replaceAll(",", "\t")],
		["an old line end", file(row("gauze", 30)).replaceAll("\r\n", "\n")],
	])("with %s", (_what, text) => {
		const { order, problems } = readOrder({ name: "a.csv", bytes: bytes(text) });
		expect(problems).toEqual([]);
		expect(order?.rows.rows[0]?.value).toMatchObject({
			item: "gauze",
			target_stock: 30,
			months_of_stock: 0.5,
		});
	});

	test("a number with two meanings is asked, and read by the answer", () => {
		const text = file(row("gauze", 30).replace(",30,", ",1.400,").replace("0.5", "2"));
		const given = { name: "a.csv", bytes: bytes(text) };
		const open = readOrder(given);
		expect(open.order).toBeUndefined();
		expect(open.question).toMatchObject({ about: "numbers", text: "1.400" });
		expect(open.problems).toMatchObject([{ code: "two-numbers", file: "a.csv", weight: "error" }]);
		const target = (numbers: "point" | "comma") =>
			readOrder(given, { numbers }).order?.rows.rows[0]?.value.target_stock;
		expect([target("point"), target("comma")]).toEqual([1.4, 1400]);
	});

	test("without the columns that were added later", () => {
		const old = header.replace(",emergency,pack_size,pack_price,unit_name", "");
		const text = `${old}\ngauze,piece,0,0,10,130,2,200,4,2027-03-09,2027-03-02,0.5,`;
		const { order, problems } = readOrder({ name: "a.csv", bytes: bytes(text) });
		expect(problems).toEqual([]);
		expect(order?.rows.rows[0]?.value).toMatchObject({ emergency: null, pack_size: null });
	});

	test.each<[string, string, string[]]>([
		["a shopping list", "bread,2\nmilk,1", ["missing-column", "unknown-column"]],
		["nothing", "", ["empty-file"]],
		["another sheet of the workbook", "date,births,note\n2027-03-01,4,", ["missing-column"]],
		["a bad cell", file(row("gauze", 30).replace(",10,", ",ten,")), ["bad-cell"]],
		["a negative stock", file(row("gauze", -30)), ["bad-cell"]],
		["a quote without end", file(`"${row("gauze", 30)}`), ["unclosed-quote"]],
	])("%s: said, by the file's own name", (_what, text, wanted) => {
		const found = codes("north.csv", bytes(text));
		for (const code of wanted) expect(found).toContainEqual([code, "north.csv"]);
	});

	test.each([
		["a picture", Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0x00)],
		["a photo", Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0x00, 0x10)],
	])("%s gives no order", (_what, content) => {
		expect(readOrder({ name: "x.csv", bytes: content }).order).toBeUndefined();
		expect(codes("x.csv", content)).toEqual([["not-text", "x.csv"]]);
	});

	test.each([
		["a shopping list", "bread,2\nmilk,1"],
		["nothing", ""],
		["an order without its target stock", file(row("gauze", 30)).replace("target_stock", "target")],
	])("%s is no order: nothing of it is added up", (_what, text) => {
		expect(readOrder({ name: "x.csv", bytes: bytes(text) }).order).toBeUndefined();
	});

	test("a bad row is left out, the good ones stand", () => {
		const text = file(row("gauze", 30).replace(",10,", ",ten,"), row("soap", 5));
		const { order, problems } = readOrder({ name: "a.csv", bytes: bytes(text) });
		expect(order?.rows.rows.map(({ value }) => value.item)).toEqual(["soap"]);
		expect(problems).toMatchObject([{ line: 2, column: "use_expected", received: "ten" }]);
	});
});

describe("several order files", () => {
	const named = (name: string, text: string) => ({ name, bytes: bytes(text) });

	test("the same file twice counts once, and both names are said", () => {
		const text = file(row("gauze", 130));
		const { orders, problems } = readOrders([named("a.csv", text), named("copy.csv", text)]);
		expect(orders.map((order) => order.file)).toEqual(["a.csv"]);
		expect(problems).toMatchObject([
			{ code: "same-order-twice", weight: "advice", file: "copy.csv" },
		]);
		expect(problems[0]?.message).toContain("a.csv");
	});

	test("two units that need the same are two orders", () => {
		const { orders, problems } = readOrders([
			named("a.csv", file(row("gauze", 130, "A"))),
			named("b.csv", file(row("gauze", 130, "B"))),
		]);
		expect(orders).toHaveLength(2);
		expect(problems).toEqual([]);
		const [sum] = combineOrders(orders).rows;
		expect([valueIn(sum?.need), valueIn(sum?.order_packs)]).toEqual([260, 3]);
	});

	test("a file that is none does not keep the others back", () => {
		const { orders, problems } = readOrders([
			{ name: "photo.jpg", bytes: Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0x00, 0x10) },
			named("a.csv", file(row("gauze", 130))),
		]);
		expect(orders.map((order) => order.file)).toEqual(["a.csv"]);
		expect(problems.map((p) => p.code)).toEqual(["not-text"]);
	});

	test("two units' own plans: packs from the summed need, to the last digit", () => {
		const units = [4, 9].map((births, i) => {
			const table = plan(unitWith({ births_per_day: births, unit_name: `Unit ${i}` })).tables[
				"order.csv"
			];
			return named(`${i}.csv`, computedCsv(table as never));
		});
		const { orders, problems } = readOrders(units);
		expect(problems).toEqual([]);
		for (const sum of combineOrders(orders).rows) {
			const need = valueIn(sum.need) as number;
			const size =
				(valueIn(sum.order_quantity) as number) / Math.max(1, valueIn(sum.order_packs) as number);
			const packs = valueIn(sum.order_packs) as number;
			expect(packs * size).toBeGreaterThanOrEqual(need - 1e-6);
			if (packs > 0) expect((packs - 1) * size).toBeLessThan(need);
		}
	});

	test("no files, no orders", () => {
		expect(readOrders([])).toEqual({ orders: [], problems: [] });
	});
});
