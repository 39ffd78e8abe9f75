import { expect, test } from "vitest";
import { hasNeed, needOf, type OrderRow, priceOf, sizeOf } from "../../../src/core/units/needOf.ts";

const row = (of: Partial<OrderRow>) => of as OrderRow;
const full = { target_stock: 100, usable: 20, on_order: 5 };

test.each<[Partial<OrderRow>, number, boolean]>([
	[full, 75, true],
	[{ ...full, usable: 120 }, 0, true],
	[{ ...full, target_stock: null }, 0, false],
	[{ ...full, usable: null }, 95, false],
	[{ ...full, on_order: null }, 80, false],
])("%j is short of %d, and says all it takes: %s", (of, need, isKnown) => {
	expect([needOf(row(of)), hasNeed(row(of))]).toEqual([need, isKnown]);
});

test.each<[Partial<OrderRow>, number[]]>([
	[{ pack_size: 50, order_packs: 3, order_quantity: 0.3 }, [50]],
	[{ pack_size: null, order_packs: 3, order_quantity: 0.3 }, [0.1]],
	[{ pack_size: 0, order_packs: 3, order_quantity: 300 }, [100]],
	[{ pack_size: null, order_packs: 0, order_quantity: 300 }, []],
	[{ pack_size: null, order_packs: 3, order_quantity: null }, []],
])("%j says what is in a pack: %j", (of, size) => {
	expect(sizeOf(row(of))).toEqual(size);
});

test.each<[Partial<OrderRow>, number[]]>([
	[{ pack_price: 4, cost: 30, order_packs: 3 }, [4]],
	[{ pack_price: 0, cost: 30, order_packs: 3 }, [0]],
	[{ pack_price: null, cost: 30, order_packs: 3 }, [10]],
	[{ pack_price: null, cost: 0, order_packs: 3 }, [0]],
	[{ pack_price: null, cost: 30, order_packs: 0 }, []],
	[{ pack_price: null, cost: null, order_packs: 3 }, []],
])("%j says what a pack costs: %j", (of, price) => {
	expect(priceOf(row(of))).toEqual(price);
});
