import { type Plan, plan } from "../../../src/core/plan/plan.ts";
import { contentOf } from "../contentOf.ts";
import { unitWith } from "../smallUnit.ts";

/** A store with soap, of which two bars go each day whatever else happens, and the products. */
export interface Store {
	/** Lots as "lot quantity made received arrives expires", a dash for a blank. */
	readonly lots?: readonly string[];
	readonly journal?: readonly string[];
	readonly leadDays?: number;
	readonly wastagePct?: number;
	readonly serviceLevel?: number;
	readonly packSize?: number | string;
	readonly price?: number | string;
	readonly keepsDays?: number | "";
	readonly usage?: readonly string[];
	readonly settings?: Record<string, string | number>;
	readonly files?: Record<string, string | null>;
}

export function planOfStore(of: Store = {}): Plan {
	const { lots = [], journal = [], leadDays = 7, wastagePct = 0, serviceLevel = 0.95 } = of;
	const { packSize = 10, price = 5, keepsDays = "", usage = ["soap,day,2,"] } = of;
	const soap = [packSize, price, leadDays, wastagePct, serviceLevel, keepsDays];
	return plan(
		unitWith(of.settings ?? {}, {
			"items.csv": `item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level,shelf_life_days
				soap,other,bar,${soap.join(",")}
				liquid,other,L,5,,7,10,0.95,
				powder,other,g,500,,14,5,0.95,
				tablets,other,tablet,100,,14,5,0.95,`,
			"usage.csv": ["item,basis,quantity,note", ...usage].join("\n"),
			"lots.csv": [
				"item,lot,quantity,made_on,received_on,arrives_on,expires_on",
				...lots.map((lot) => `soap,${lot.split(" ").join(",").replaceAll(",-", ",")}`),
			].join("\n"),
			"journal.csv": ["day,item,lot,entry,quantity,note", ...journal].join("\n"),
			...of.files,
		}),
	);
}

/** Columns of the soap's row in order.csv. */
export function orderOf(made: Plan, ...columns: string[]): unknown[] {
	const row = contentOf(made, "order.csv", "item", ...columns).find(([item]) => item === "soap");
	return row?.slice(1) ?? [];
}
