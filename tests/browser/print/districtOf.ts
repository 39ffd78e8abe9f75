import { zipTexts } from "../../../src/io/zipWorkbook.ts";
import { inventedUnit } from "../../district/inventedUnit.ts";

/** How many units of a district send what. */
export interface SentUnits {
	readonly workbooks: number;
	readonly orders: number;
	/** Lines of each order. */
	readonly items: number;
}

/** A file as a unit sends it. */
export interface SentFile {
	readonly name: string;
	readonly base64: string;
}

export const ONE_UNIT: SentUnits = { workbooks: 1, orders: 0, items: 0 };
export const FULL_DISTRICT: SentUnits = { workbooks: 12, orders: 60, items: 30 };
export const LARGE_DISTRICT: SentUnits = { workbooks: 60, orders: 2000, items: 12 };

const HEADER =
	"item,measure,usable,on_order,use_expected,target_stock,order_packs,order_quantity,cost,run_out_on,order_by,months_of_stock,remark,emergency,pack_size,pack_price,unit_name";

/** What units of a district send: workbooks, orders with names as long as people write them, and a file that is broken. */
export function districtOf({ workbooks, orders, items }: SentUnits): SentFile[] {
	const sent = (name: string, content: string | Uint8Array): SentFile => ({
		name,
		base64: Buffer.from(content).toString("base64"),
	});
	return [
		...upTo(workbooks, (at) => sent(`unit-${at}.zip`, zipTexts(inventedUnit(at)))),
		...upTo(orders, (at) => sent(`order of ${at}.csv`, orderOf(at, items))),
		...(workbooks > 1 ? [sent("broken.zip", "PK")] : []),
	];
}

function orderOf(unit: number, items: number): string {
	const name = `Comprehensive emergency obstetric and newborn care unit number ${unit}`;
	const lines = upTo(
		items,
		(at) =>
			`Sterilisation-resistant disposable undersheet No. ${at},piece,70,0,80,100,1,100,2.4,2027-03-0${1 + (at % 9)},2027-03-01,,,${at % 3 === 0 ? "yes" : "no"},100,2.4,${name}`,
	);
	return [HEADER, ...lines, ""].join("\r\n");
}

function upTo<T>(count: number, make: (at: number) => T): T[] {
	return Array.from({ length: count }, (_, at) => make(at + 1));
}
