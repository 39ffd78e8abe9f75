import { expect, test } from "vitest";
import { productOf } from "../../../src/core/edit/begin/productOf.ts";
import { meaning } from "../../../src/core/edit/meaning.ts";
import { triedOn } from "../../../src/core/edit/trial/triedOn.ts";
import { kitsSheet } from "../../../src/core/sheets/kits.ts";
import type { Workbook } from "../../../src/core/workbook.ts";
import { smallUnit } from "../smallUnit.ts";
import { entered, entryOf } from "./begun.ts";

/** Sheets in the words that pages show, as they are typed, read just like codes. */
const own = smallUnit({
	"kits.csv": `kit,kind,status,ready_since,note
		A,bag set,En service,,blue
		B,bag set,out of service,,
		C,bag set, In Service ,,red`,
	"chlorine.csv": `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
		powder,poudre,70,% m/m,,0,0,non
		bleach,Liquide,3.5,% w/v,,0,0,OUI`,
	"items.csv": "item,group,measure,pack_size\nbleach,chlorine,mL,",
	"lots.csv": "item,lot,quantity\nbleach,B1, 3000 ",
	"steps.csv": `step,basis,minutes,hands_on,method
		wash,kit,10,oui,
		soak,charge,20,non,Chlore
		store,séance,5,oui,`,
});
const tried = (key: string, text: string): Workbook =>
	triedOn(own, new Map([[key, text]])).workbook;
const column = ({ tables }: Workbook, file: string, at: number) =>
	tables[file]?.rows.map((row) => row[at]);

test.each([
	["En service", "in_service"],
	[" out_of_service ", "out_of_service"],
	["lent", undefined],
	["", undefined],
])("a status %j means %j", (text, code) => {
	expect(meaning(kitsSheet.columns.status, text)).toBe(code);
});

test("kits in service are counted in whatever words it says so, and none is added for them", () => {
	expect(entryOf("kits").read(own)).toBe("2");
	expect(entered(own, "kits", "2")).toBe(own);
	expect(column(entered(own, "kits", "3"), "kits.csv", 0)).toEqual(["A", "B", "C", "K1"]);
	expect(column(tried("kits", "1"), "kits.csv", 2)).toEqual([
		"En service",
		"out of service",
		"out_of_service",
	]);
});

test("the product in use is the one that says so, with its form and measure", () => {
	expect(productOf(own)).toMatchObject({ name: "bleach", form: "liquid", quantities: ["3000"] });
	expect(entryOf("product-kind").read(own)).toBe("liquid pct_w_v");
	expect(entered(own, "product-kind", "liquid pct_w_v").tables["lots.csv"]).toEqual(
		own.tables["lots.csv"],
	);
	expect(entryOf("strength").unit(own)).toBe("% (g in 100 mL)");
	expect(column(entered(own, "in-store", "5 x 1000"), "lots.csv", 2)).toEqual(["5000"]);
});

test("a product of no known form, or without a name, has nothing in the store", () => {
	const of = (line: string) =>
		smallUnit({
			"chlorine.csv": `product,form,strength,strength_measure\n${line}`,
			"lots.csv": "item,lot,quantity\n,L1,5\nbleach,B1,7",
		});
	const CHOOSE = "Choose the kind of chlorine product first.";
	expect(entryOf("in-store").write(of("bleach,foam,3,% w/v"), "5")).toBe(CHOOSE);
	expect(entryOf("in-store").write(of(",liquid,3,% w/v"), "5")).toBe(CHOOSE);
	expect(productOf(of(",liquid,3,% w/v"))).toMatchObject({
		lots: [],
		quantities: [],
		hasItem: false,
	});
	expect(productOf(of("bleach,liquid,3,% w/v"))).toMatchObject({ lots: [1], quantities: ["7"] });
});

test("a round without a time is none of the times, and a setting that stands first is changed where it stands", () => {
	const unit = smallUnit({
		"rounds.csv": "start,label\n,by hand\n07:00,early",
		"unit.csv": "key,value\npots,3\nplan_start,2027-03-01",
	});
	expect(entryOf("rounds").read(unit)).toBe("07:00");
	expect(entered(unit, "pots", "4").tables["unit.csv"]?.rows).toEqual([
		["pots", "4"],
		["plan_start", "2027-03-01"],
	]);
});

test("steps that another method has already are brought by it no second time", () => {
	expect(tried("method", "chlorine").tables["steps.csv"]).toEqual(own.tables["steps.csv"]);
	const boiled = column(tried("method", "boiling"), "steps.csv", 4);
	expect(boiled?.slice(0, 2)).toEqual(["", "boiling"]);
	expect(boiled?.slice(-2)).toEqual(["Chlore", ""]);
});
