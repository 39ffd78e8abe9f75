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

	/** @param isFirst the unit has no earlier row of this item */
	add(row: OrderRow, isFirst = true): void {
		const need = needOf(row);
		if (isFirst) this.units++;
		if (need > 0) this.short++;
		if (!hasNeed(row)) this.unknown++;
		if (row.emergency === "yes") this.runOutFirst++;
		this.usable = plus(this.usable, row.usable);
		this.onOrder = plus(this.onOrder, row.on_order);
		this.useExpected = plus(this.useExpected, row.use_expected);
		this.targetStock = plus(this.targetStock, row.target_stock);
		this.need = plus(this.need, row.target_stock === null ? null : need);
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
