import { chlorineSources } from "./chlorineSources.ts";
import { say } from "./say.ts";
import type { Source } from "./source.ts";

/** Every published source the program relies on, said once. */
export const sources = {
	/** What a unit begins with lies between two figures of EN-BIRTH; the share that uses a kit was not counted there. */
	kitShare: {
		title: say`Estimate between two published shares: KC et al., EN-BIRTH, BMC Pregnancy and Childbirth 21(S1):235`,
		place: say`2021, abstract and key findings (seen); 22\u202f752 births in five hospitals: 4.4 of 100 newborns ventilated by bag and mask, 16.2 stimulated`,
		url: "https://link.springer.com/article/10.1186/s12884-020-03422-9",
		mark: "estimate",
		disagreement: say`Between these hospitals 0.7 to 7.1 of 100 newborns were ventilated and 5.2 to 21.0 stimulated. How many births use a kit was not counted.`,
	},
	poissonBirths: {
		title: say`Gam et al., BMJ Open 3:e002920: births by weekday are well described by Poisson`,
		place: say`2013, abstract; 211\u202f290 births in seven clinics`,
		url: "https://bmjopen.bmj.com/content/3/8/e002920.full",
		mark: "seen",
	},
	thinning: {
		title: say`Thinning and adding of Poisson counts`,
		place: say`textbook result; numbers recomputed in the tests`,
		mark: "derived",
	},
	discounted: {
		title: say`Harvey and Fernandes, Journal of Business and Economic Statistics 7(4):407-417`,
		place: say`1989; recursions as in Handbook of Discrete-Valued Time Series ch. 11, pp. 250-251`,
		url: "https://www.rdocumentation.org/packages/pgam/versions/0.4.17/topics/pgam.filter",
		mark: "seen",
	},
	weekdays: {
		title: say`Barra et al., Tidsskrift for Den norske legeforening 135(23-24)`,
		place: say`2015, abstract: Tuesday 7.5 % above Sunday; the drawing towards 1 is an estimate`,
		mark: "seen",
		disagreement: say`Where births are planned, weekends are 20 to 35 % lower (USA): learned from the unit's own days.`,
	},
	palm: {
		title: say`Feeney and Sherbrooke, Management Science 12(5):391 (Palm's theorem, base stock)`,
		place: say`1966, abstract`,
		url: "https://scilit.com/publications/43e4600156a092630699927869addd94",
		mark: "seen",
	},
	crommelin: {
		title: say`Crommelin, Post Office Electrical Engineers' Journal 25:41-50 (fixed holding times: M/D/c)`,
		place: say`1932; derived again, simulated and compared with tables in the tests`,
		mark: "from memory",
	},
	perishable: {
		title: say`Schmidt and Nahmias: one-for-one ordering of perishable stock`,
		place: say`1985; derived again and simulated in the tests`,
		mark: "from memory",
	},
	readyLife: {
		title: say`Screening reference manual, International Agency for Research on Cancer copy`,
		place: say`p. 130: up to one week in a closed, disinfected container`,
		url: "https://www.yumpu.com/en/document/view/49169087/reference-manual-iarc-screening-group/130",
		mark: "seen",
		disagreement: say`Once opened: at once or within 24 hours (from memory). Some protocols: use at once.`,
	},
	soakStrength: {
		title: say`Book copy of a national guideline: 0.5 %, 20 minutes, for containers`,
		place: say`2015; for devices 0.5 % with ordinary water is from memory`,
		url: "https://autoclaveindicatortape.wordpress.com/2015/12/26/autoclave-indicator-tape-13/",
		mark: "seen",
		disagreement: say`Screening reference manual Table C-1: 0.1 % made with boiled water, 20 minutes (seen). The 0.5 % of a national guideline was seen for containers only; for the pieces of a kit it is from memory. Less is named for other things (seen): respiratory equipment at home about 0.1 %, items soaked after cleaning 0.05 % (WHO 2014), products cleared for high-level disinfection 0.04 to 0.045 %. None of the makers' pages read lists chlorine for newborn resuscitation devices.`,
	},
	soakMinutes: {
		title: say`A Book for Midwives`,
		place: say`2010, p. 64: at least 20 minutes, clean first`,
		url: "https://iiab.me/modules/en-hesperian_health/en_midw_2011_Full_Book/page80.html",
		mark: "seen",
		disagreement: say`10 minutes is decontamination before cleaning. After cleaning: 30 minutes at 0.05 % (WHO 2014); 10 minutes at 20 °C for products cleared for high-level disinfection; 3 minutes at about 0.1 % for respiratory equipment at home, only where its maker permits it (all seen).`,
	},
	methods: {
		title: say`Teaching brochure on cleaning newborn resuscitation equipment`,
		place: say`June revision, no year: wash, then autoclave, glutaraldehyde, or boil for at least 10 minutes; chlorine is not in its list`,
		mark: "seen",
		disagreement: say`Handbooks for small units soak in chlorine; White et al. 2025, one hospital in Kenya: steam lowered germs but damaged single-use pieces, an improved chlorine method did as well. The maker's instructions come first.`,
	},
	boilPieces: {
		title: say`Screening reference manual, International Agency for Research on Cancer copy`,
		place: say`p. 130: 20 minutes from a rolling boil, lid on, all under water, nothing added; no longer below 5\u202f500 m`,
		url: "https://www.yumpu.com/en/document/view/49169087/reference-manual-iarc-screening-group/130",
		mark: "seen",
		disagreement: say`A teaching brochure on newborn equipment: at least 10 minutes; a maker's guide: 10 to 20.`,
	},
	steamPieces: {
		title: say`A Book for Midwives; Screening reference manual`,
		place: say`p. 62 and p. 130: at least 20 minutes from when the water boils`,
		mark: "seen",
		disagreement: say`A maker's guide for newborn accessories: 10 to 20 minutes. Steam damaged single-use pieces in one hospital.`,
	},
	sterileLife: {
		title: say`Handbooks of sterile supply: cotton wrapped twice, on open shelves, 3 to 4 weeks`,
		mark: "from memory",
		disagreement: say`Wrapped once: some days; sealed pouches: half a year and more; others count events, not days: sterile until wet, torn or opened.`,
	},
	...chlorineSources,
	threeRinses: {
		title: say`Handbooks for small units: rinse at least three times with boiled water`,
		place: say`the effect is computed in the reference notes`,
		mark: "from memory",
	},
	boiledWaterLife: {
		title: say`Boiled water is used within 24 hours`,
		place: say`a rule of practice; read only on a page of questions and answers`,
		mark: "from memory",
	},
	drying: {
		title: say`Screening reference manual, International Agency for Research on Cancer copy`,
		place: say`p. 130: dry in the air in a disinfected container, taken out with disinfected forceps; times are estimates`,
		url: "https://www.yumpu.com/en/document/view/49169087/reference-manual-iarc-screening-group/130",
		mark: "seen",
		disagreement: say`Common practice dries inside and out with sterile gauze, 10 to 30 minutes with the air; the air alone takes hours (estimates).`,
	},
	cleanFirst: {
		title: say`MSF, cholera guideline, Appendix 15; A Book for Midwives, current web edition`,
		place: say`clean with soap and water before chlorine: dirt and blood use it up`,
		url: "https://medicalguidelines.msf.org/en/viewport/CHOL/english/appendix-15-preparation-and-use-of-chlorine-solutions-32409866.html",
		mark: "seen",
		disagreement: say`Older handbooks soak for 10 to 20 minutes first and clean then (seen: A Book for Midwives 2010 in print, Open University). WHO and PAHO 2016 advise against it: chlorine fixes dirt and eats at metal (from memory).`,
	},
	steamDamage: {
		title: say`White et al., Global Health: Science and Practice 13(1):e2300398`,
		place: say`2025, abstract, one hospital in Kenya: steam lowered the germs but damaged single-use sets; an improved chlorine method did as well in small samples`,
		url: "https://1med.mdlalibrary.com/livenewss/news/1057548/Disinfection-of-Neonatal-Resuscitation-Equipment-in-Resource-Limited-Settings-Lessons-From-a-Mixed-Methods-Implementation-Experience-in-Kenya",
		mark: "seen",
		disagreement: say`Handbooks name steam for 20 minutes (seen) and makers steam, boiling or an autoclave for pieces made to be used again (seen). Look on the piece and in its maker's sheet.`,
	},
	boilHold: {
		title: say`Emerging Infectious Diseases 31(8), table 1, compares the bodies' rules`,
		place: say`2025, rules for drinking water: WHO none; CDC 1 min, 3 above 1\u202f981 m; EPA 1, 3 above 1\u202f524 m; Health Canada 1, 2 above 2\u202f000 m`,
		url: "https://wwwnc.cdc.gov/eid/article/31/8/25-0208-t1",
		mark: "seen",
		disagreement: say`Left blank, the plan takes 1 minute up to 2\u202f000 m, where EPA says 3 above 1\u202f524 m and CDC 3 above 1\u202f981 m. Philippines, Department of Health: 2 minutes (seen). Handbooks of high-level disinfection: 20 minutes for rinse water (from memory).`,
	},
	standardAtmosphere: {
		title: say`Standard atmosphere and Antoine equation for water`,
		place: say`constants from memory; checked against a table`,
		mark: "from memory",
	},
	cooling: {
		title: say`Newton's law of cooling; the rate scaled by volume to the power −1/3`,
		place: say`derived; a covered 10 L pot at 0.25 per hour is an estimate, one k is an approximation`,
		mark: "derived",
		disagreement: say`For 10 L, 0.57 per hour follows from an open laboratory vessel, 0.21 from a large covered kettle (a weak source), 0.18 from a heat loss of 10 W/m²/K (derived).`,
	},
	heat: {
		title: say`Heat of water: 4.186 kJ/kg/K; of evaporation: 2\u202f257 kJ/kg`,
		place: say`physical tables`,
		url: "https://wfrjr.com/data/formula/data/water.html",
		mark: "seen",
	},
	stoves: {
		title: say`Open clean-cooking data (technical specifications of stoves)`,
		place: say`efficiency and heating value by fuel`,
		mark: "seen",
		disagreement: say`A second open data set, with the plan's own figure behind each: wood on three stones 0.09 (0.12), wood improved 0.18 (0.3), charcoal improved 0.25 (0.3), induction 0.73 (electric plate 0.85); kerosene 0.45 (0.35) and gas 0.35 (0.5), a pair that looks swapped. Heat in a kilogram: charcoal 31 MJ (30), kerosene 43.8 (43), gas 46 (45.5).`,
	},
	losses: {
		title: say`Open University, immunization module 5.2.5: multiply the need by 100 ÷ (100 − wastage %)`,
		url: "https://www.open.edu/openlearncreate/mod/oucontent/view.php?id=53353&section=1.4.5",
		mark: "seen",
	},
	periodicReview: {
		title: say`MSH, Family Planning Manager's Handbook ch. 8: order = desired maximum − on hand − on order`,
		place: say`lead time + review period set the level`,
		url: "http://erc.msh.org/fpmh_english/chp8/p4.html",
		mark: "seen",
		disagreement: say`Handbooks ask for a safety stock of at least half a review period (a training on maximum and minimum), or of at least one and usually more (MSH); here the chance of lasting sets it.`,
	},
	monthsOfStock: {
		title: say`JSI, The Logistics Handbook 3.2: stock on hand ÷ average monthly consumption`,
		place: say`30.4 days a month as in WHO 2002, Annex 5`,
		url: "https://123dok.com/article/purpose-assessing-stock-status-logistics-handbook.qvlw0k50",
		mark: "seen",
	},
	firstExpiredFirstOut: {
		title: say`WHO and JSI, Guidelines for the Storage of Essential Medicines: the lot that expires first leaves first`,
		place: say`2003; the wording is from memory`,
		mark: "from memory",
	},
	vinegarStrength: {
		title: say`FDA Compliance Policy Guide Sec. 525.825`,
		place: say`March 1995: vinegar holds at least 4 g of acetic acid per 100 mL; that 5 % is usual is from a shop's label`,
		mark: "seen",
	},
	descaling: {
		title: say`Estimate: no guideline was found that fixes minutes or mixture for such pieces`,
		mark: "estimate",
		disagreement: say`A weak page on kettles (seen): 30 to 60 minutes; 1 part of vinegar to 2 of water for light scale, 1 to 1, and 2 to 1 for heavy.`,
	},
} as const satisfies Record<string, Source>;
