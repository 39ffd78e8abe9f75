import type { Workbook } from "../../src/core/workbook.ts";
import { smallUnit, unitWith } from "../core/smallUnit.ts";

const SHORT = { plan_days: 2, stock_horizon_days: 28, boil_minutes_measured: 30 };
const ITEMS = `item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level
	gauze squares,gauze,piece,100,4,7,5,0.95
	liquid,other,kg,5,3,7,10,0.95`;
const PRODUCTS =
	"product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use";

const days = (from: string, births: readonly (number | string)[]) => {
	const first = Date.parse(`${from}T00:00:00Z`) / 86_400_000;
	return births.map((count, i) => {
		const date = new Date((first + i) * 86_400_000).toISOString().slice(0, 10);
		return `${date},${count},`;
	});
};
const register = (...rows: readonly string[]) => ["date,births,kits_used", ...rows].join("\n");

/** Small units in each of which something is wrong, or to be looked at, with what is written down. */
export const mistakes: Readonly<Record<string, Workbook>> = {
	"orders placed": unitWith(SHORT, {
		"placed.csv": `ordered_on,item,packs,expected_on,received_on,packs_received,lot,note
			2027-02-20,gauze squares,4,2027-02-10,,,,due before it was placed
			2027-02-20,gauze squares,3,,2027-02-19,3,G1,came before it was placed
			2027-02-20,gauze squares,2,,,2,G1,packs and no day
			2027-02-20,gauze squares,0,,2027-02-25,2,G1,given up and received
			2027-02-21,gauze squares,2,,2027-02-25,2,G1,
			2027-02-21,gauze squares,2,,2027-02-26,2,G1,twice
			2027-02-22,gauze squares,2,,2027-02-26,2,G9,no such lot
			2027-02-23,gauze squares,5,,2027-02-26,3,G1,two are left
			2027-03-20,gauze squares,1,,2027-03-21,1,G1,after the plan
			2027-02-01,vinegar,1,2027-02-09,,,,overdue`,
		"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
			gauze squares,G1,100,,2027-02-27,,2028-03-12`,
	}),
	"lots of the store": unitWith(SHORT, {
		"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
			liquid,L1,10,2027-02-10,2027-01-20,,2027-07-10
			liquid,L2,10,2027-04-10,,,2027-07-10
			gauze squares,G1,100,,2027-02-27,,2027-02-20
			gauze squares,G2,100,,,2027-02-20,2028-02-20
			ribbon,R1,5,,2027-02-27,,`,
		"journal.csv": `day,item,lot,entry,quantity,note
			2027-02-20,gauze squares,G7,issue,20,`,
	}),
	"rounds that draw": unitWith(
		{ ...SHORT, product_drawn_by: "rounds" },
		{
			"rounds-done.csv": `date,start,ended,kits,product,lot,litres,strength_reading_pct,soak_in,soak_out,descaled,done_by,released_by,note
				2027-02-20,07:00,08:35,A X,liquid,L1,8,,07:40,07:20,no,Ama,Esi,
				2027-02-20,08:00,09:30,A,liquid,L1,8,,,,no,Ama,Esi,
				2027-02-21,07:00,08:30,B,liquid,,8,,,,no,Ama,Esi,
				2027-04-21,07:00,08:30,B,liquid,L1,8,,,,no,Ama,Esi,
				2027-03-02,07:00,08:30,B, liquid , L1 ,8,,07:40,,no,Ama,Esi,
				2027-02-24,07:00,08:30,C,,L1,8,,,08:00,no,Ama,Esi,
				2027-02-23,14:00,15:30,C,,L1,8,,,,no,Ama,Esi,`,
			"journal.csv": `day,item,lot,entry,quantity,note
				2027-02-20,liquid,L1,issue,2,`,
			"uses.csv": `at,kit,what,by,note
				2027-02-20 03:15,A,none_ready,Ama,
				2027-02-20 04:15,,used,Ama,
				2027-04-20 03:15,A,used,Ama,
				2027-03-02 03:15,B,used,Ama,`,
			"checks.csv": `checked_at,kit,pieces_counted,clean,bag_refills,valve_moves,seal_holds,relief_opens,suction_holds,note
				2027-02-20 10:00,A,6,yes,yes,yes,yes,yes,yes,
				2027-02-21 10:00,A,5,,yes,yes,yes,yes,yes,
				2027-02-22 10:00,A,,yes,yes,yes,yes,yes,yes,
				2027-02-22 10:00,X,5,yes,yes,yes,yes,yes,yes,
				2027-04-22 10:00,A,5,yes,yes,yes,yes,yes,yes,
				2027-03-02 10:00,B,5,yes,yes,yes,yes,yes,yes,`,
		},
	),
	"a register with slips": unitWith(
		{ ...SHORT, births_from_register: "yes" },
		{
			"records.csv": register(
				...days("2027-01-01", [3, 4, 2, 40, 3]),
				"2027-01-25,2,5",
				...days("2027-01-26", [4, 3, 2]),
				"2027-02-02,,2",
				"2027-02-12,2,2",
				"2027-03-01,3,",
				"2027-03-02,3,",
			),
		},
	),
	"a register that is short": unitWith(
		{ ...SHORT, births_from_register: "yes" },
		{ "records.csv": register(...days("2027-02-22", [3, 4, 2, 5, 3, 4, 2])) },
	),
	"a register before the day to learn from": unitWith(
		{ ...SHORT, births_from_register: "yes", register_from: "2027-02-20" },
		{ "records.csv": register(...days("2027-01-22", [3, 4, 2, 5, 3, 4, 2])) },
	),
	"kinds and treatments": unitWith(
		{ ...SHORT, births_per_day: 1, method: "boiling", renew_kits: "when_expired" },
		{
			"kinds.csv": `kind,piece,count,never_by
				bag set,bag,1,boiling
				bag set,valve,2,single_use
				bag set,mask,2,autoclave
				bag set,tube,1,steam
				bag set,cap,1,chlorine`,
			"treatments.csv": `kind,piece,method,note
				bag set,valve,single_use,
				bag set,mask,autoclave,
				bag set,tube,steam,
				bag set,cap,chlorine,
				suction,,boiling,`,
			"kits.csv": `kit,kind,status,ready_since,note
				A,bag set,in_service,,
				B,suction,in_service,,`,
			"items.csv": `item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level
				valve,other,piece,10,,7,0,0.95`,
			"usage.csv": "item,basis,quantity,note\nvalve,kit,2,\nribbon,kit,1,",
		},
	),
	"products and measures": unitWith(
		{ ...SHORT, dose_for_wet_kits: "no", carry_in_ml_per_kit: 150, order_money: 10 },
		{
			"items.csv": ITEMS,
			"chlorine.csv": `${PRODUCTS}
				liquid,liquid,3.5,pct_w_v,,0,,yes
				heavy,liquid,5,pct_w_w,,1,,no
				strong,liquid,90,pct_w_v,,1,,no
				weak,liquid,0.3,pct_w_v,,1,,no
				odd,powder,35,pct_w_v,,,0,no
				thin,powder,4,pct_w_w,,,0,no`,
			"ward-solution.csv": "use,litres_per_day,strength_pct,note\nfloors,20,3.4,\nwalls,20,4,",
		},
	),
	"water that is not cool in time": unitWith(
		{ ...SHORT, pots: 1, pots_on_stove: 1, pot_litres: 4, boiled_water_hours: 3 },
		{ "water-sources.csv": "source,litres_per_day,note\ntank,5," },
	),
	"a stove that does not heat": unitWith({
		...SHORT,
		boil_minutes_measured: "",
		heat_kw: 0.05,
	}),
	"a room that is too warm": unitWith({ ...SHORT, room_c: 39 }),
	"hands that are busy": unitWith({
		...SHORT,
		births_per_day: 60,
		reprocessing: "after_each_use",
		worker_hours_a_day: 12,
	}),
	"hands that cannot do it": unitWith({
		...SHORT,
		births_per_day: 90,
		reprocessing: "after_each_use",
		worker_hours_a_day: 8,
	}),
	"headers and rows": smallUnit({
		"unit.csv": "key,value\nplan_start,2027-03-01\nplan_days,400\nno_such_key,1\npots,two",
		"births.csv": "date,births,births,colour\n2027-03-01,2,3,red,more\n2027-03-01,4,,",
		"rounds.csv": "start\n07:00\n07:00\n25:00",
		"kinds.csv": "",
		"steps.csv": null,
	}),
};
