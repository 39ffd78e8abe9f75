import type { TextTable, Workbook } from "../../src/core/workbook.ts";

/** A text table from lines of comma-separated cells; no quoting. */
export function tableOf(text: string): TextTable {
	const [header = [], ...rows] = text
		.trim()
		.split("\n")
		.map((line) => line.trim().split(","));
	return { header, rows };
}

/** A small invented unit: every file of the format, each as short as it can be. Its products do not fade, its kits carry no water into the soak. */
const files: Record<string, string> = {
	"unit.csv": `key,value
		unit_name,Test unit
		plan_start,2027-03-01
		births_per_day,6
		carry_in_ml_per_kit,0
		pots,20
		pots_on_stove,2`,
	"births.csv": "date,births,note",
	"rounds.csv": `start,label
		07:00,morning
		14:00,afternoon
		21:00,night`,
	"steps.csv": `step,basis,minutes,hands_on,method
		prepare,round,20,yes,chlorine
		wash and dry,kit,50,yes,
		soak,load,20,no,
		rinse and store,round,20,yes,`,
	"kinds.csv": `kind,piece,count
		bag set,bag,1
		bag set,valve,2
		bag set,mask,2`,
	"kits.csv": `kit,kind,status,ready_since,note
		A,bag set,in_service,2027-02-27,
		B,bag set,in_service,2027-02-28,
		C,bag set,in_service,,
		D,bag set,out_of_service,,torn mask`,
	"usage.csv": `item,basis,quantity,note
		gauze squares,piece,2,
		clean gloves,worker_round,2,
		vinegar,descale,1,`,
	"items.csv": `item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level
		gauze squares,gauze,piece,100,4,7,5,0.95
		clean gloves,gloves,pair,50,6,7,5,0.95
		vinegar,other,L,1,1,7,0,0.95
		liquid,other,L,5,3,7,10,0.95
		powder,other,g,500,8,14,5,0.95
		tablets,other,tablet,100,9,14,5,0.95`,
	"chlorine.csv": `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
		liquid,liquid,3.5,pct_w_v,,0,,yes
		powder,powder,70,pct_w_w,,,0,no
		tablets,tablet,1.5,g_per_tablet,,,,no`,
	"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
		liquid,L1,10,2027-01-10,2027-01-20,,2027-07-10
		liquid,L2,10,2027-02-10,,2027-03-20,2027-08-10
		powder,P1,500,,2026-12-01,,2028-12-01
		tablets,T1,200,,2026-01-01,,2026-12-31`,
};

/** The small unit, with whole files replaced by other text; null leaves a file out. */
export function smallUnit(changes: Record<string, string | null> = {}): Workbook {
	const all = { ...files, ...changes };
	return {
		tables: Object.fromEntries(
			Object.entries(all).flatMap(([file, text]) => (text === null ? [] : [[file, tableOf(text)]])),
		),
	};
}

/** The small unit with settings added or replaced. */
export function unitWith(
	settings: Record<string, string | number>,
	changes: Record<string, string | null> = {},
): Workbook {
	const kept = (files["unit.csv"] as string)
		.split("\n")
		.filter((line) => !Object.keys(settings).some((key) => line.trim().startsWith(`${key},`)));
	const added = Object.entries(settings).map(([key, value]) => `${key},${value}`);
	return smallUnit({ ...changes, "unit.csv": [...kept, ...added].join("\n") });
}
