import { hasNeed, needOf, type OrderRow, priceOf, sizeOf } from "./needOf.ts";

/** All units' needs of one item, added up row by row, so that no row need be kept. */
export class ItemSum {
	readonly item: string;
	readonly measure: string;
	units = 0;
	short = 0;
	unknown = 0;
	runOutFirst = 0;
	/** What of it is known; null where no unit says any. */
	usable: number | null = null;
	onOrder: number | null = null;
	useExpected: number | null = null;
	targetStock: number | null = null;
	need: number | null = null;
	unitPacks: number | null = null;
	runOutOn = "";
	orderBy = "";
	/** The packs that units name, each with the first price given for it. */
	readonly sizes = new Map<number, number | undefined>();
	/** The first price of a pack whose size nobody says. */
	#price: number | undefined;

	constructor(item: string, measure: string) {
		this.item = item;
		this.measure = measure;
	}

	/** One unit's rows of the item, which may be several where the unit has two names for it. */
	add(rows: readonly OrderRow[]): void {
		this.units++;
		if (rows.some((row) => needOf(row) > 0)) this.short++;
		if (rows.some((row) => !hasNeed(row))) this.unknown++;
		if (rows.some((row) => row.emergency === "yes")) this.runOutFirst++;
		for (const row of rows) this.#addRow(row);
	}

	#addRow(row: OrderRow): void {
		this.usable = plus(this.usable, row.usable);
		this.onOrder = plus(this.onOrder, row.on_order);
		this.useExpected = plus(this.useExpected, row.use_expected);
		this.targetStock = plus(this.targetStock, row.target_stock);
		this.need = plus(this.need, row.target_stock === null ? null : needOf(row));
		this.unitPacks = plus(this.unitPacks, row.order_packs);
		this.runOutOn = earlier(this.runOutOn, row.run_out_on);
		this.orderBy = earlier(this.orderBy, row.order_by);
		const [size] = sizeOf(row);
		const [price] = priceOf(row);
		if (size === undefined) this.#price ??= price;
		else if (this.sizes.get(size) === undefined) this.sizes.set(size, price);
	}

	/** The largest pack that any unit names; undefined where none does. */
	get packSize(): number | undefined {
		return this.sizes.size === 0 ? undefined : Math.max(...this.sizes.keys());
	}

	/** The price of a pack of that size; a smaller pack's says nothing about it. */
	get price(): number | undefined {
		const size = this.packSize;
		return (size === undefined ? undefined : this.sizes.get(size)) ?? this.#price;
	}
}

function plus(sum: number | null, amount: number | null): number | null {
	return amount === null ? sum : (sum ?? 0) + amount;
}

function earlier(before: string, day: string): string {
	return day !== "" && (before === "" || day < before) ? day : before;
}
