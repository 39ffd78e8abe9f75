import type { Workbook } from "../../src/core/workbook.ts";
import { unitWith } from "../core/smallUnit.ts";

const SHORT = { plan_days: 3, stock_horizon_days: 28 };

const kinds = {
	"kinds.csv": `kind,piece,count
		bag set,bag,1
		bag set,valve,2
		bag set,mask,2
		suction set,bulb,1
		suction set,catheter,3`,
	"kits.csv": `kit,kind,status,ready_since,note
		A,bag set,in_service,2027-02-27,
		B,bag set,in_service,2027-02-20,
		C,bag set,in_service,,
		D,bag set,out_of_service,,torn mask
		E,suction set,in_service,2027-02-28,
		F,suction set,in_service,2027-02-28,`,
	"kind-use.csv": `kind,uses_per_100_births
		bag set,9
		suction set,14`,
	"checks.csv": `checked_at,kit,pieces_counted,clean,bag_refills,valve_moves,seal_holds,relief_opens,suction_holds,note
		2027-02-27 08:10,A,5,yes,yes,yes,yes,yes,,
		2027-02-27 08:30,B,4,yes,yes,yes,yes,yes,,mask lost
		2027-02-28 09:00,E,4,yes,,,,,yes,
		2027-02-28 09:10,F,4,no,,,,,no,sticky`,
};

const store = {
	"journal.csv": `day,item,lot,entry,quantity,note
		2027-02-20,gauze squares,G1,receipt,100,
		2027-02-21,gauze squares,G1,count,240,
		2027-02-22,gauze squares,G1,issue,300,
		2027-02-25,liquid,L1,issue,4,`,
	"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
		gauze squares,G1,150,2026-12-01,2026-12-20,,2027-03-12
		gauze squares,G2,100,,,2027-03-05,2028-03-05
		clean gloves,H1,20,,2027-01-05,,
		vinegar,V1,3,,2027-01-05,,2027-02-01
		liquid,L1,10,2026-08-10,2026-08-20,,2027-07-10
		liquid,L2,10,2027-02-10,,2027-03-20,2027-08-10
		powder,P1,500,2026-01-01,2026-12-01,,2028-12-01
		tablets,T1,200,,2026-01-01,,2026-12-31`,
	"strength-readings.csv": `item,lot,read_on,strength_pct,method,note
		liquid,L1,2027-02-01,2.9,titration,
		liquid,L1,2027-02-20,4.4,strip,`,
};

const ward = {
	"ward-solution.csv": `use,litres_per_day,strength_pct,note
		floors,20,0.1,
		spills,2,1,`,
	"water-sources.csv": `source,litres_per_day,note
		rain tank,60,
		river,40,`,
	"hours.csv": `hour,share
		0,2
		7,3
		8,5
		20,1`,
};

const register = {
	"records.csv": [
		"date,births,kits_used,times",
		...Array.from({ length: 24 }, (_, day) => {
			const date = new Date(Date.UTC(2027, 1, 5 + day)).toISOString().slice(0, 10);
			return `${date},${3 + ((day * 5) % 7)},${day % 4 === 0 ? 1 : 0},${day === 6 ? "03:10 14:25" : ""}`;
		}),
	].join("\n"),
};

const chlorine = (used: "liquid" | "powder" | "tablets", fade: number) => ({
	"chlorine.csv": [
		"product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use",
		`liquid,liquid,5,pct_w_w,1.08,${fade},,${used === "liquid" ? "yes" : "no"}`,
		`powder,powder,70,pct_w_w,,,2,${used === "powder" ? "yes" : "no"}`,
		`tablets,tablet,1.5,g_per_tablet,,,,${used === "tablets" ? "yes" : "no"}`,
		"unknown bleach,liquid,3,pct_w_v,,1,,no",
	].join("\n"),
});

const treated = {
	...kinds,
	"steps.csv": `step,basis,minutes,hands_on,method
		prepare,round,10,yes,
		take apart and wash,kit,20,yes,
		soak,load,20,no,chlorine
		rinse,load,9,yes,chlorine
		boil,load,45,no,boiling
		pack and send away,kit,6,yes,autoclave
		dry and put together,kit,9,yes,`,
	"treatments.csv": `kind,piece,method,note
		bag set,bag,boiling,
		bag set,valve,autoclave,
		suction set,,chlorine,
		suction set,catheter,single_use,
		suction set,tube,boiling,not in its list`,
};

const record = {
	"kits.csv": `kit,kind,status,ready_since,note
		A,bag set,in_service,2027-02-20,
		B,bag set,in_service,2027-02-27,
		C,bag set,in_service,,
		D,bag set,out_of_service,,torn mask`,
	"uses.csv": `at,kit,what,by,note
		2027-02-06 03:15,,none_ready,Ama,
		2027-02-26 04:35,A,used,Esi,
		2027-02-27 23:50,B,opened,Ama,not needed
		2027-02-28 02:10,Z,used,,no such kit
		2027-03-09 02:10,C,used,,after the plan began`,
	"rounds-done.csv": `date,start,ended,kits,product,lot,litres,strength_reading_pct,soak_in,soak_out,descaled,done_by,released_by,note
		2027-02-20,07:00,08:35,A,liquid,L1,8,,07:40,08:00,yes,Ama,Esi,
		2027-02-26,14:00,15:40,A C,liquid,L1,8,0.5,14:42,15:02,no,Kofi,,
		2027-02-28,07:00,08:30,B,liquid,L9,8,0.3,07:38,07:50,no,Ama,Esi,too short`,
	"checks.csv": `checked_at,kit,pieces_counted,clean,bag_refills,valve_moves,seal_holds,relief_opens,suction_holds,note,purpose,damage,checked_by
		2027-02-20 08:40,A,5,yes,yes,yes,yes,yes,yes,,after_round,no,Esi
		2027-02-26 15:50,A,5,yes,yes,yes,yes,yes,yes,,after_round,no,Esi
		2027-02-26 15:55,C,4,yes,yes,yes,yes,no,yes,,after_round,no,Esi`,
	"placed.csv": `ordered_on,item,packs,expected_on,received_on,packs_received,lot,note
		2027-01-28,gauze squares,4,2027-02-12,2027-02-15,3,G1,one short
		2027-02-22,clean gloves,2,2027-03-03,,,,
		2027-02-10,vinegar,1,2027-02-20,,,,overdue
		2027-02-11,ribbon,1,2027-03-20,,,,not an item`,
	"past-plans.csv": `date,measure_of,expected,set_aside
		2027-02-22,births,5.3,9
		2027-02-22,kits_used,0.5,2
		2027-02-23,births,5.3,9
		2027-02-26,kits_used,0.5,2`,
	"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
		liquid,L1,10,2027-01-10,2027-01-20,,2027-07-10
		gauze squares,G1,300,,2027-02-15,,2027-03-20
		gauze squares,G2,300,,2027-01-15,,2028-03-20`,
	"journal.csv": `day,item,lot,entry,quantity,note
		2027-02-20,gauze squares,G2,issue,20,
		2027-02-25,liquid,L1,count,8,`,
};

/** Small invented units that between them use every sheet and most settings, well and badly. */
export const variants: Readonly<Record<string, Workbook>> = {
	plain: unitWith(SHORT),
	"several kinds, checked": unitWith(
		{ ...SHORT, births_per_day: 11, spare_kits: 2, ready_life_days: 3 },
		kinds,
	),
	"a store with history, fading liquid": unitWith(
		{ ...SHORT, store_c: 31, review_days: 14, currency: "LC" },
		{ ...store, ...chlorine("liquid", 1.4) },
	),
	"powder, made once a day": unitWith(
		{ ...SHORT, solution_made: "each_day", target_strength_pct: 0.4, measure_step_g: 5 },
		{ ...store, ...chlorine("powder", 1) },
	),
	"tablets out of date": unitWith(SHORT, { ...store, ...chlorine("tablets", 1) }),
	"ward and water, high up": unitWith(
		{
			...SHORT,
			altitude_m: 2400,
			fuel: "wood_three_stone",
			heat_kw: 1.4,
			cooling_first_c: 80,
			cooling_second_c: 52,
			cooling_hours: 2,
			rinse_buckets: 2,
			pot_litres: 6,
		},
		ward,
	),
	"after each use": unitWith({ ...SHORT, reprocessing: "after_each_use", workers_per_round: 2 }),
	"a register": unitWith(
		{ ...SHORT, kit_share_from_register: "yes", births_per_day: 4 },
		{ ...register, ...ward },
	),
	"each piece its own way": unitWith({ ...SHORT, births_per_day: 9, spare_kits: 1 }, treated),
	"boiling alone": unitWith({ ...SHORT, method: "boiling" }),
	"a record that is kept": unitWith({ ...SHORT, review_days: 10 }, { ...register, ...record }),
	"few births, many kits": unitWith(
		{ ...SHORT, births_per_day: 0.4, ready_life_days: 2, descale_every_rounds: 3 },
		{ "births.csv": "date,births,note\n2027-03-02,0,closed\n2027-03-09,3,after the plan" },
	),
	"rounds too close": unitWith(
		{ ...SHORT, births_per_day: 30, soak_minutes: 45 },
		{
			"rounds.csv": `start,label
				07:00,
				08:00,second
				23:30,late`,
		},
	),
	"cells that cannot be read": unitWith(
		{ ...SHORT, target_strength_pct: ".", pots: "two", births_per_day: "many", odd_key: 3 },
		{
			"births.csv": "date,births,note\n2027-03-01,few,\n2027-03-01,2,\nMonday,3,",
			"items.csv": `item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level
				gauze squares,gauze,piece,none,4,7,5,0.95
				clean gloves,gloves,pair,50,6,-1,5,0.95
				liquid,other,L,5,3,7,10,1.5`,
			"steps.csv": `step,basis,minutes,hands_on
				prepare,round,soon,yes
				soak,load,20,no`,
		},
	),
	"no rounds, no kits, nothing in the store": unitWith(SHORT, {
		"rounds.csv": "start,label",
		"kits.csv": "kit,kind,status,ready_since,note",
		"lots.csv": null,
		"items.csv": "item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level",
	}),
};
