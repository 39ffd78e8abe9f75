import { hasNeed, needOf, type OrderRow, priceOf, sizeOf } from "./needOf.ts";

/** All units' needs of one item, added up row by row, so that no row need be kept. */
export class ItemSum {
	readonly item: string;
	readonly measure: string;
	units = 0;
	short = 0;
	unknown = 0;
	runOutFirst = 0;
	usable = 0;
	onOrder = 0;
	useExpected = 0;
	targetStock = 0;
	need = 0;
	unitPacks = 0;
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
		this.usable += row.usable ?? 0;
		this.onOrder += row.on_order ?? 0;
		this.useExpected += row.use_expected ?? 0;
		this.targetStock += row.target_stock ?? 0;
		this.need += need;
		this.unitPacks += row.order_packs ?? 0;
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

function earlier(before: string, day: string): string {
	return day !== "" && (before === "" || day < before) ? day : before;
}
